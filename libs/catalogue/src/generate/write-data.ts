/**
 * Writes the computed data files of the demo range: vessels and covers from their designs, then the revision of all
 * items. Run by `npm run generate -w @flangewise/catalogue`; a test holds the files against the designs.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { type Item, slotNames } from '@flangewise/model';
import { format } from 'prettier';
import { computedItems, revisionOf } from './generated-data.js';

const month = '2026-11';
const file = (name: string): URL => new URL(`../data/${name}.json`, import.meta.url);

const write = async (name: string, content: unknown): Promise<void> => {
  writeFileSync(file(name), await format(JSON.stringify(content), { parser: 'json', printWidth: 110 }));
};

for (const [slot, items] of Object.entries(computedItems())) await write(slot, items);
const all = slotNames.flatMap((slot) => JSON.parse(readFileSync(file(slot), 'utf8')) as readonly Item[]);
await write('revision', { revision: revisionOf(month, all) });
