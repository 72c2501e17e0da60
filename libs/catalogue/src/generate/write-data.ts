/**
 * Writes the data files of the demo range: every item from what is typed and designed, the price lists, and the
 * revision that names it. Run by `npm run generate -w @flangewise/catalogue`; a test holds the files against the designs.
 */
import { writeFileSync } from 'node:fs';
import { generatedRange, revisionOf, typedPriceLists, withSeriesPrices } from './generated-data.js';

const month = '2026-11';

const write = (name: string, text: string): void => {
  writeFileSync(new URL(`../data/${name}.json`, import.meta.url), `${text}\n`);
};

/** One item a line, so that a difference of two states can be read. */
const lines = (values: readonly unknown[]): string =>
  `[\n${values.map((value) => JSON.stringify(value)).join(',\n')}\n]`;

const { items, seriesPricesEur } = generatedRange();
write('items', lines(items));
const priceLists = typedPriceLists().map((list) => withSeriesPrices(list, seriesPricesEur));
for (const list of priceLists) write(`price-list-${list.id.toLowerCase()}`, JSON.stringify(list, null, 1));
write('revision', JSON.stringify({ revision: revisionOf(month, { items: [...items], priceLists }) }));
