import type { Assessment, Item, SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import { CatalogueState } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { chosenItems } from './chosen-items.js';
import { systemFor } from './system-for.js';

export interface RevisionAsked {
  readonly id: string;
  readonly number: number;
}

type Kept = Pick<CatalogueDesk, 'database' | 'workshops'>;

/** The items that a system had chosen, as the catalogue of then has them; null where that catalogue is not on file. */
async function itemsOf(
  { database, workshops }: Kept,
  document: SystemInput,
  name: string,
): Promise<readonly Item[] | null> {
  const onFile = await database.catalogueRevision.count({
    where: { name, state: CatalogueState.released },
  });
  if (onFile === 0) return null;
  const { catalogue } = await workshops.named(name);
  const chosen = chosenItems(document);
  return catalogue.items.filter((item) => chosen.has(item.id));
}

/** A system as it was frozen, with its proof and its parts of then, whatever the catalogue has become. */
export async function getSystemRevision(desk: CatalogueDesk, { id, number }: RevisionAsked) {
  const { database, person } = desk;
  const row = await database.systemRevision.findFirst({
    where: { number, system: { id, ...visibleSystems(person) } },
    include: { author: { select: { name: true } } },
  });
  if (row === null)
    throw refuse('NOT_FOUND', { what: 'revision of this system', field: 'number', given: number });
  const { author, createdAt, catalogueRevision, ruleRevision } = row;
  const document = row.document as unknown as SystemInput;
  return {
    number,
    author: author.name,
    createdAt: createdAt.toISOString(),
    catalogueRevision,
    ruleRevision,
    document: systemFor(document, person),
    assessment: row.assessment as unknown as Assessment,
    items: await itemsOf(desk, document, catalogueRevision),
  };
}
