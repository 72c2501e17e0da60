import type { InquiryInput } from '@flangewise/model';
import { visibleInquiries } from '../auth/visible.js';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { clientNameOf, clientOfInquiry } from './client-of-inquiry.js';
import { takeUp } from './take-up.js';

export interface InquiryUpdate {
  readonly id: string;
  readonly document: InquiryInput;
  /** The version that was seen; without it the last word wins. */
  readonly version?: number | undefined;
}

const noClient = 'no client';

/** What a client was sent stays with that client. */
const wasOffered = async (step: Prisma.TransactionClient, inquiryId: string): Promise<boolean> =>
  (await step.offerRevision.count({
    where: { sentAt: { not: null }, offer: { system: { inquiryId } } },
  })) > 0;

/**
 * Saves an inquiry. An engineer who does takes it up if nobody has; a customer may until then. Systems keep the inquiry that
 * they were made for, so nothing that was answered changes.
 */
export async function updateInquiry(
  { database, person }: Desk,
  { id, document, version: given }: InquiryUpdate,
) {
  return database.$transaction(async (step) => {
    await lockRow(step, 'Inquiry', id);
    const row = await step.inquiry.findFirst({
      where: { id, ...visibleInquiries(person) },
      include: { client: { select: { name: true } } },
    });
    if (row === null) throw refuse('NOT_FOUND', { what: 'inquiry', field: 'id', given: id });
    const { number } = row;
    if (given !== undefined && given !== row.version)
      throw refuse('CHANGED_MEANWHILE', { what: 'inquiry', given, current: row.version });
    await takeUp(step, id, person);
    const clientId = await clientOfInquiry(step, { document, person });
    if (clientId !== row.clientId && (await wasOffered(step, id)))
      throw refuse('CLIENT_HAS_OFFER', {
        number: printedNumber(number),
        client: row.client?.name ?? noClient,
        given: clientNameOf(document) || noClient,
      });
    const { version } = await step.inquiry.update({
      where: { id },
      data: {
        title: document.title,
        clientId,
        document: storable(document),
        authorId: person.id,
        version: { increment: 1 },
      },
    });
    return { id, number: printedNumber(number), version };
  });
}
