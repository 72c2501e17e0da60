import type { Prisma } from '../generated/client.js';

/**
 * Puts items into a draft that has none, in one statement however many they are.
 *
 * @param items as JSON: an array of items in their order
 */
export async function writeItems(
  step: Prisma.TransactionClient,
  revisionId: string,
  items: string,
): Promise<void> {
  await step.$executeRaw`
    INSERT INTO "CatalogueItem" ("revisionId", "id", "slot", "position", "document")
    SELECT ${revisionId}, "item"->>'id', "item"->>'slot', "position", "item"
    FROM json_array_elements(${items}::json) WITH ORDINALITY AS "listed" ("item", "position")`;
}
