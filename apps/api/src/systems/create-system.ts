import type { SystemInput } from '@flangewise/model';
import { visibleInquiries } from '../auth/visible.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import { takeUp } from '../inquiries/take-up.js';
import { letterOf } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { checkChoices } from './check-choices.js';
import { systemBy } from './system-for.js';
import { titleOfSystem } from './title-of-system.js';

export interface NewSystem {
  readonly inquiryId: string;
  readonly system: SystemInput;
}

/** Saves one more answer to an inquiry, under the next letter: an engineer takes the inquiry up by it, a customer may until then. */
export async function createSystem({ database, workshop, person }: Desk, { inquiryId, system }: NewSystem) {
  const document = systemBy(person, system);
  const read = readSystem(document);
  checkChoices(read, workshop);
  return database.$transaction(async (step) => {
    const inquiry = await step.inquiry.findFirst({
      where: { id: inquiryId, ...visibleInquiries(person) },
      select: { id: true },
    });
    if (inquiry === null)
      throw refuse('NOT_FOUND', { what: 'inquiry', field: 'inquiryId', given: inquiryId });
    await takeUp(step, inquiryId, person);
    const letter = letterOf((await step.system.count({ where: { inquiryId } })) + 1);
    const { id } = await step.system.create({
      data: {
        inquiryId,
        letter,
        label: titleOfSystem(read, workshop),
        document: storable({ ...document, name: letter }),
        authorId: person.id,
      },
    });
    // Whatever is done to an inquiry puts it on top of the list.
    await step.inquiry.update({ where: { id: inquiryId }, data: { updatedAt: new Date() } });
    return { id, name: letter };
  });
}
