import { refuse } from '../errors/refusal.js';
import { CatalogueState, type Prisma } from '../generated/client.js';
import { packCatalogue, type PackedCatalogue } from './packed-catalogue.js';

/** The revision in force: the one released last. */
export async function currentRevision(
  step: Prisma.TransactionClient,
): Promise<{ readonly id: string; readonly name: string }> {
  const current = await step.catalogueRevision.findFirst({
    where: { state: CatalogueState.released },
    orderBy: [{ releasedAt: 'desc' }, { number: 'desc' }],
    select: { id: true, name: true },
  });
  if (current === null) throw new Error('the database has no released catalogue: the start stores one');
  return current;
}

/** The id of the released revision of this name. */
export async function revisionIdOf(step: Prisma.TransactionClient, name: string): Promise<string> {
  const found = await step.catalogueRevision.findFirst({
    where: { name, state: CatalogueState.released },
    select: { id: true },
  });
  if (found === null) throw refuse('NOT_FOUND', { what: 'catalogue', field: 'revision', given: name });
  return found.id;
}

/** A revision with its items in their order, as one document and of one moment. Discarded drafts have no items any more. */
export async function loadCatalogue(step: Prisma.TransactionClient, id: string): Promise<PackedCatalogue> {
  const rows = await step.$queryRaw<readonly { version: number; json: string }[]>`
    SELECT "version", json_build_object(
      'revision', "name",
      'maker', "maker",
      'items', COALESCE((
        SELECT json_agg("document" ORDER BY "position", "id") FROM "CatalogueItem" WHERE "revisionId" = "revision"."id"
      ), '[]'::json),
      'priceLists', "priceLists"
    )::text AS "json"
    FROM "CatalogueRevision" AS "revision" WHERE "id" = ${id}`;
  if (rows[0] === undefined)
    throw refuse('NOT_FOUND', { what: 'catalogue revision', field: 'id', given: id });
  return packCatalogue(`${id}@${rows[0].version}`, rows[0].json);
}
