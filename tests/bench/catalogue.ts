/**
 * A large catalogue brought in and looked through on this machine: `npm run bench:catalogue -- 50000`.
 * The range is repeated under other numbers, names, masses, lead times and, in steps of preferred numbers, sizes; it is imported
 * as the API does it, by a worker thread and a database of its own, and audited.
 */
import { dirname, join } from 'node:path';
import { writeExport } from '@flangewise/catalogue/exchange';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue, Item, PriceList } from '@flangewise/model';
import { auditRevision } from '../../apps/api/src/catalogue/audit-revision.js';
import { compareRevisions } from '../../apps/api/src/catalogue/compare-revisions.js';
import { importFile } from '../../apps/api/src/catalogue/import-file.js';
import { openDraft } from '../../apps/api/src/catalogue/open-draft.js';
import { releaseDraft } from '../../apps/api/src/catalogue/release-draft.js';
import { storeShippedRange } from '../../apps/api/src/catalogue/store-shipped-range.js';
import { applyMigrations, readMigrations } from '../../apps/api/src/database/apply-migrations.js';
import { openDatabase } from '../../apps/api/src/database/client.js';
import { startThrowawayServer } from '../../apps/api/src/embedded-database/throwaway-server.js';
import { buildApi } from '../../apps/api/src/start/build-api.js';
import { checkout } from '../../apps/api/src/start/checkout.js';
import type { Person } from '../../apps/api/src/trpc/context.js';
import { createWorkerPool } from '../../apps/api/src/workshop/worker-pool.js';
import { createWorkshops } from '../../apps/api/src/workshop/workshops.js';

const wanted = Number(process.argv[2] ?? 50_000);
const { items, priceLists } = pricedDemoCatalogue;

/** Steps of the preferred numbers R10 (ISO 3), by which sizes of a series grow. */
const steps = [1, 1.25, 1.6, 2] as const;
const sizes = new Set(['massKg', 'powerW', 'areaM2', 'capacityKg', 'volumeL', 'maxMassKg', 'flowM3PerS']);

/** Numbers have five digits; where the first five letters of a number are taken, the next free one is. */
const numberOf = (): ((item: Item, copy: number) => string) => {
  const taken = new Set(items.map(({ id }) => id));
  const next = new Map<string, number>();
  return ({ id }, copy) => {
    if (copy === 0) return id;
    const prefix = id.slice(0, 3);
    let number = next.get(prefix) ?? 10_000;
    while (taken.has(`${prefix}${String(number)}`)) number++;
    next.set(prefix, number + 1);
    return `${prefix}${String(number)}`;
  };
};

function copyOf(item: Item, { id, copy }: { readonly id: string; readonly copy: number }): Item {
  if (copy === 0) return item;
  const step = steps[copy % steps.length] ?? 1;
  const grown = Object.entries(item).map(([key, value]) => [
    key,
    typeof value === 'number' && sizes.has(key) ? Number((value * step).toPrecision(3)) : value,
  ]);
  return {
    ...(Object.fromEntries(grown) as Item),
    id,
    name: `${item.name}, make ${String(copy)}`,
    leadTimeDays: item.leadTimeDays + (copy % 5),
  };
}

function largeCatalogue(): Catalogue {
  const number = numberOf();
  const listed = Array.from({ length: Math.ceil(wanted / items.length) }, (_, copy) =>
    items.map((item) => ({ from: item.id, item: copyOf(item, { id: number(item, copy), copy }) })),
  )
    .flat()
    .slice(0, wanted);
  const priced = (list: PriceList): PriceList => ({
    ...list,
    prices: Object.fromEntries(listed.map(({ from, item }) => [item.id, list.prices[from] ?? '1'])),
  });
  return {
    ...pricedDemoCatalogue,
    revision: 'large',
    items: listed.map(({ item }) => item),
    priceLists: priceLists.map(priced),
  };
}

async function timed<T>(what: string, task: () => Promise<T>): Promise<T> {
  const begin = performance.now();
  const value = await task();
  console.log(`${what.padEnd(58)}${((performance.now() - begin) / 1000).toFixed(1).padStart(8)} s`);
  return value;
}

const keeper: Person = {
  id: 'keeper',
  name: 'Teodor Brask',
  email: 'k@averholt.example',
  role: 'catalogue_keeper',
  clientId: null,
};

const server = await startThrowawayServer();
const built = await buildApi();
if (!built.ok) throw new Error(built.error.message);
const pool = createWorkerPool(join(dirname(built.value), 'worker.mjs'));
const url = server.url('postgres');
const migrated = await applyMigrations(url, readMigrations(join(checkout, 'prisma', 'migrations')));
if (!migrated.ok) throw new Error(migrated.error.message);
const database = openDatabase(url);
await database.user.create({ data: keeper });

try {
  const workshops = createWorkshops(database, pool.run);
  const desk = { database, workshops, person: keeper };
  await timed(`shipped range stored, ${String(items.length)} items`, () =>
    storeShippedRange(database, pricedDemoCatalogue),
  );
  const large = largeCatalogue();
  for (const format of ['json', 'csv', 'xlsx'] as const) {
    const content = await timed(`written as ${format}, ${String(large.items.length)} items`, () =>
      writeExport(format, large),
    );
    const draft = await openDraft(desk);
    const seen = { draftId: draft.id, version: draft.version, format, content };
    const mebibyte = (content.byteLength / 2 ** 20).toFixed(1);
    const imported = await timed(`imported as ${format}, ${mebibyte} MiB`, () =>
      importFile(desk, { ...seen, apply: true }),
    );
    if (!imported.applied)
      throw new Error(JSON.stringify({ ...imported.report, troubles: imported.report.troubles.slice(0, 3) }));
    if (draft.version > 1) continue;
    const found = await timed('audited', () => auditRevision(desk, draft.id, undefined));
    console.log(`  dead ${String(found.deadItems.length)}, gaps ${String(found.gaps.length)}`);
  }
  const draft = await openDraft(desk);
  await timed('compared with the shipped range', async () => {
    const { id } = await database.catalogueRevision.findFirstOrThrow({ where: { state: 'released' } });
    return compareRevisions(desk, { from: id, to: draft.id });
  });
  await timed('released', () =>
    releaseDraft(desk, { id: draft.id, version: draft.version, note: 'Measured' }),
  );
  await timed('opened by the next who asks', () => workshops.current());
} finally {
  await pool.close();
  await database.$disconnect();
  await server.remove();
}
