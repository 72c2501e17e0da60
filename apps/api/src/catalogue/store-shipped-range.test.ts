import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue } from '@flangewise/model';
import { expect, it } from 'vitest';
import type { Database } from '../database/client.js';
import { migratedDatabase } from '../database/test-database.js';
import { currentRevision, loadCatalogue } from './load-catalogue.js';
import { unpackCatalogue } from './packed-catalogue.js';
import { storeShippedRange } from './store-shipped-range.js';

const shippedAs = (revision: string): Catalogue => ({
  ...pricedDemoCatalogue,
  revision,
  items: pricedDemoCatalogue.items.slice(0, 5),
  priceLists: [],
});

const inForce = async (database: Database): Promise<Catalogue> =>
  unpackCatalogue(await loadCatalogue(database, (await currentRevision(database)).id));

it('stores the whole range as it is, down to the order of items and fields', async () => {
  const { database } = await migratedDatabase();
  expect(await storeShippedRange(database, pricedDemoCatalogue)).toBe(true);
  expect(JSON.stringify(await inForce(database))).toBe(JSON.stringify(pricedDemoCatalogue));
});

it('stores it once, whoever starts at the same time', async () => {
  const { database } = await migratedDatabase();
  const stored = await Promise.all([1, 2, 3].map(() => storeShippedRange(database, shippedAs('a'))));
  expect(stored.sort()).toEqual([false, false, true]);
  expect(await database.catalogueRevision.count()).toBe(1);
});

it('puts a newer shipped range into force, and leaves it there when an older product starts', async () => {
  const { database } = await migratedDatabase();
  for (const revision of ['a', 'b', 'a']) await storeShippedRange(database, shippedAs(revision));
  expect((await inForce(database)).revision).toBe('b');
  expect(await database.catalogueRevision.count()).toBe(2);
});

it('leaves what people released in force', async () => {
  const { database } = await migratedDatabase();
  await storeShippedRange(database, shippedAs('a'));
  await database.user.create({
    data: { id: 'keeper', name: 'Teodor Brask', email: 'k@averholt.example', role: 'catalogue_keeper' },
  });
  const { id } = await database.catalogueRevision.create({
    data: { name: 'own', maker: 'Averholt', priceLists: [], tables: {}, authorId: 'keeper' },
  });
  await database.catalogueRevision.update({
    where: { id },
    data: { state: 'released', releasedAt: new Date() },
  });
  expect(await storeShippedRange(database, shippedAs('b'))).toBe(false);
  expect((await inForce(database)).revision).toBe('own');
});
