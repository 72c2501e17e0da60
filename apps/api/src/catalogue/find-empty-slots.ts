import { slotNames, slots } from '@flangewise/model';
import type { Prisma } from '../generated/client.js';

/** Slots of which every system needs an item and for which a revision has none that is still made, by their titles. */
export async function findEmptySlots(
  step: Prisma.TransactionClient,
  revisionId: string,
): Promise<readonly string[]> {
  const rows = await step.$queryRaw<readonly { slot: string }[]>`
    SELECT DISTINCT "slot" FROM "CatalogueItem"
    WHERE "revisionId" = ${revisionId} AND "document"->>'life' IS DISTINCT FROM 'discontinued'`;
  const served = new Set(rows.map(({ slot }) => slot));
  return slotNames
    .filter((slot) => !slots[slot].optional && !served.has(slot))
    .map((slot) => slots[slot].title);
}
