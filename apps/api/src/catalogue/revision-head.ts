import type { CatalogueState, Prisma } from '../generated/client.js';
import { currentRevision } from './load-catalogue.js';

/** What is said of a revision without its items. */
export interface RevisionHead {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly state: CatalogueState;
  readonly note: string;
  /** How many. */
  readonly items: number;
  /** Who opened it; null where it came with the product. */
  readonly author: string | null;
  readonly createdAt: string;
  readonly releasedAt: string | null;
  readonly releasedBy: string | null;
  /** Name of the revision that it began as a copy of. */
  readonly basedOn: string | null;
  /** Whether it is in force. */
  readonly isCurrent: boolean;
  readonly version: number;
}

const columns = {
  author: { select: { name: true } },
  releasedBy: { select: { name: true } },
  basedOn: { select: { name: true } },
  _count: { select: { items: true } },
} as const satisfies Prisma.CatalogueRevisionInclude;

/** The revisions that fit, the newest first. */
export async function findHeads(
  step: Prisma.TransactionClient,
  where: Prisma.CatalogueRevisionWhereInput = {},
): Promise<readonly RevisionHead[]> {
  const current = await currentRevision(step);
  const rows = await step.catalogueRevision.findMany({
    where,
    orderBy: { number: 'desc' },
    omit: { priceLists: true, tables: true },
    include: columns,
  });
  return rows.map(
    ({ id, number, name, state, note, author, releasedBy, basedOn, version, _count, ...row }) => ({
      id,
      number,
      name,
      state,
      note,
      items: _count.items,
      author: author?.name ?? null,
      createdAt: row.createdAt.toISOString(),
      releasedAt: row.releasedAt?.toISOString() ?? null,
      releasedBy: releasedBy?.name ?? null,
      basedOn: basedOn?.name ?? null,
      isCurrent: id === current.id,
      version,
    }),
  );
}
