import type { InquiryInput } from '@flangewise/model';
import { Role } from '../auth/roles.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { storable } from '../database/storable.js';
import { clientOfInquiry } from './client-of-inquiry.js';

/** Enters an inquiry. An engineer answers for what he enters himself; a customer's waits until an engineer takes it up. */
export async function createInquiry({ database, person }: Desk, document: InquiryInput) {
  return database.$transaction(async (step) => {
    const clientId = await clientOfInquiry(step, { document, person });
    const { id, number } = await step.inquiry.create({
      data: {
        title: document.title,
        clientId,
        ownerId: person.role === Role.applications_engineer ? person.id : null,
        authorId: person.id,
        document: storable(document),
      },
    });
    return { id, number: printedNumber(number) };
  });
}
