import type { SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import { takeUp } from '../inquiries/take-up.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { checkChoices } from './check-choices.js';
import { systemBy, systemFor } from './system-for.js';
import { titleOfSystem } from './title-of-system.js';

export interface SystemChange {
  readonly id: string;
  readonly document: SystemInput;
  /** The version that was seen when the change began. */
  readonly version: number;
}

/** The system as it is now; until the transaction ends nobody else changes it. */
async function lockSystem(step: Prisma.TransactionClient, { person }: Desk, id: string) {
  await lockRow(step, 'System', id);
  const row = await step.system.findFirst({
    where: { id, ...visibleSystems(person) },
    include: { author: { select: { name: true } } },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'system', field: 'id', given: id });
  return { ...row, document: row.document as unknown as SystemInput };
}

type Locked = Awaited<ReturnType<typeof lockSystem>>;

function changedByOther({ author, updatedAt, document, version }: Locked, { person }: Desk, given: number) {
  const at = updatedAt.toISOString();
  return refuse(
    'SYSTEM_CHANGED_BY_OTHER',
    { by: author.name, at, given, version },
    { details: { by: author.name, at, document: systemFor(document, person), version } },
  );
}

/**
 * Saves a system that nobody else changed meanwhile, assessed before it is saved: an engineer takes its inquiry up by it, a
 * customer may until then.
 */
export async function saveSystem(desk: Desk, { id, document: given, version }: SystemChange) {
  const { database, workshop, person } = desk;
  const read = readSystem(systemBy(person, given));
  checkChoices(read, workshop);
  return database.$transaction(async (step) => {
    const row = await lockSystem(step, desk, id);
    await takeUp(step, row.inquiryId, person);
    if (row.version !== version) throw changedByOther(row, desk, version);
    const document = systemBy(person, given, row.document);
    const assessment = workshop.assess(document);
    await step.system.update({
      where: { id },
      data: {
        document: storable({ ...document, name: row.letter }),
        label: titleOfSystem(read, workshop),
        authorId: person.id,
        version: version + 1,
      },
    });
    return { version: version + 1, assessment };
  });
}
