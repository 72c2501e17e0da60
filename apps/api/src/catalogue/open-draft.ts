import { CatalogueAction, CatalogueState } from '../generated/client.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { currentRevision } from './load-catalogue.js';
import { findHeads, type RevisionHead } from './revision-head.js';

/** The draft that is open, else a new one that begins as a copy of the catalogue in force. */
export async function openDraft({ database, person }: CatalogueDesk): Promise<RevisionHead> {
  return database.$transaction(async (step) => {
    // One at a time: of two who open a draft at once the second finds that of the first.
    await step.$executeRaw`LOCK TABLE "CatalogueRevision" IN SHARE ROW EXCLUSIVE MODE`;
    const [open] = await findHeads(step, { state: CatalogueState.draft });
    if (open !== undefined) return open;
    const { id: basedOnId } = await currentRevision(step);
    const { id } = await step.$queryRaw<readonly { id: string }[]>`
      WITH "drawn" AS (SELECT nextval(pg_get_serial_sequence('"CatalogueRevision"', 'number')) AS "number")
      INSERT INTO "CatalogueRevision" ("id", "number", "name", "maker", "priceLists", "tables", "basedOnId", "authorId")
      SELECT gen_random_uuid()::text, "drawn"."number", 'draft ' || "drawn"."number", "maker", "priceLists", "tables", "id", ${person.id}
      FROM "CatalogueRevision", "drawn" WHERE "id" = ${basedOnId}
      RETURNING "id"`.then(([row]) => row ?? Promise.reject(new Error('the catalogue in force is gone')));
    await step.$executeRaw`
      INSERT INTO "CatalogueItem" ("revisionId", "id", "slot", "position", "document")
      SELECT ${id}, "id", "slot", "position", "document" FROM "CatalogueItem" WHERE "revisionId" = ${basedOnId}`;
    await step.catalogueChange.create({
      data: { revisionId: id, version: 1, action: CatalogueAction.opened, authorId: person.id },
    });
    const [made] = await findHeads(step, { id });
    if (made === undefined) throw new Error('the draft was made and is not there');
    return made;
  });
}
