import type { Catalogue } from '@flangewise/model';
import type { Database } from '../database/client.js';
import { storable } from '../database/storable.js';
import { CatalogueState } from '../generated/client.js';
import { writeItems } from './write-items.js';

/**
 * Releases the range that came with the product into a database that has none, or none but an older one that came with the
 * product. Where people have released a catalogue, theirs stays in force.
 *
 * @returns whether it was stored now
 */
export async function storeShippedRange(database: Database, shipped: Catalogue): Promise<boolean> {
  const { revision: name, maker, items, priceLists } = shipped;
  return database.$transaction(async (step) => {
    // One starter at a time: the second finds what the first stored.
    await step.$executeRaw`LOCK TABLE "CatalogueRevision" IN SHARE ROW EXCLUSIVE MODE`;
    const ofPeople = { state: CatalogueState.released, authorId: { not: null } };
    const keeps = await step.catalogueRevision.count({ where: { OR: [ofPeople, { name }] } });
    if (keeps > 0) return false;
    const { id } = await step.catalogueRevision.create({
      data: { name, maker, priceLists: storable(priceLists), tables: {} },
    });
    await writeItems(step, id, JSON.stringify(items));
    await step.catalogueRevision.update({
      where: { id },
      data: {
        state: CatalogueState.released,
        releasedAt: new Date(),
        note: 'The range that came with the product.',
      },
    });
    return true;
  });
}
