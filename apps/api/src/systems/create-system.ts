import type { SystemInput } from '@flangewise/model';
import { visibleInquiries } from '../auth/visible.js';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import { letterOf } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { checkChoices } from './check-choices.js';
import { titleOfSystem } from './title-of-system.js';

export interface NewSystem {
  readonly inquiryId: string;
  readonly system: SystemInput;
}

/** Saves one more answer to an inquiry, under the next letter; the engineer who does takes the inquiry up if nobody has. */
export async function createSystem({ database, workshop, person }: Desk, { inquiryId, system }: NewSystem) {
  const read = readSystem(system);
  checkChoices(read, workshop);
  return database.$transaction(async (step) => {
    await lockRow(step, 'Inquiry', inquiryId);
    const inquiry = await step.inquiry.findFirst({
      where: { id: inquiryId, ...visibleInquiries(person) },
      select: { ownerId: true, _count: { select: { systems: true } } },
    });
    if (inquiry === null)
      throw refuse('NOT_FOUND', { what: 'inquiry', field: 'inquiryId', given: inquiryId });
    const letter = letterOf(inquiry._count.systems + 1);
    const { id } = await step.system.create({
      data: {
        inquiryId,
        letter,
        label: titleOfSystem(read, workshop),
        document: storable({ ...system, name: letter }),
        authorId: person.id,
      },
    });
    await step.inquiry.update({ where: { id: inquiryId }, data: { ownerId: inquiry.ownerId ?? person.id } });
    return { id, name: letter };
  });
}
