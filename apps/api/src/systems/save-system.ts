import type { SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import { checkChoices } from './check-choices.js';
import { titleOfSystem } from './title-of-system.js';

export interface SystemChange {
  readonly id: string;
  readonly document: SystemInput;
  /** The version that was seen when the change began. */
  readonly version: number;
}

async function changedByOther({ database, person }: Desk, { id, version: given }: SystemChange) {
  const now = await database.system.findFirst({
    where: { id, ...visibleSystems(person) },
    include: { author: { select: { name: true } } },
  });
  if (now === null) return refuse('NOT_FOUND', { what: 'system', field: 'id', given: id });
  const { version, document, author } = now;
  const at = now.updatedAt.toISOString();
  return refuse(
    'SYSTEM_CHANGED_BY_OTHER',
    { by: author.name, at, given, version },
    { details: { by: author.name, at, document, version } },
  );
}

/** Saves a system that nobody else changed meanwhile, assessed before it is saved. */
export async function saveSystem(desk: Desk, change: SystemChange) {
  const { database, workshop, person } = desk;
  const { id, document, version } = change;
  const read = readSystem(document);
  checkChoices(read, workshop);
  const assessment = workshop.assess(document);
  const row = await database.system.findFirst({
    where: { id, ...visibleSystems(person) },
    select: { letter: true },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'system', field: 'id', given: id });
  const { count } = await database.system.updateMany({
    where: { id, version },
    data: {
      document: storable({ ...document, name: row.letter }),
      label: titleOfSystem(read, workshop),
      authorId: person.id,
      version: version + 1,
    },
  });
  if (count === 0) throw await changedByOther(desk, change);
  return { version: version + 1, assessment };
}
