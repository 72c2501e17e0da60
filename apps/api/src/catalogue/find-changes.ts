import type { CatalogueDesk } from '../trpc/context.js';

/** More are not shown at once. */
const mostChanges = 500;

/** Who did what to a revision while it was a draft, the last first. */
export async function findChanges({ database }: Pick<CatalogueDesk, 'database'>, revisionId: string) {
  const rows = await database.catalogueChange.findMany({
    where: { revisionId },
    orderBy: { version: 'desc' },
    take: mostChanges,
    include: { author: { select: { name: true } } },
  });
  return rows.map(({ version, action, subject, before, after, author, createdAt }) => ({
    version,
    action,
    subject,
    before,
    after,
    author: author.name,
    at: createdAt.toISOString(),
  }));
}
