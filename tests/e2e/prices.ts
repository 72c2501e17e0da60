import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import { checkout } from '../run/command.js';

/** A unit of measure after a number: that is no price. */
const unit = '[\\s\\u2060]*(?:1/min|mPa|[cm]?m[²³]?|k?W|k?N|L|K|°C|bar|kg|s|min|h)(?!\\w)';
/** Not a part of a word, a path or a date, and not the code of a sign in a style sheet. */
const number = new RegExp(`(?<![\\w./\\\\-]|U\\+)\\d{4,}(?:\\.\\d{2})?(?![\\w.]*\\w)(?!${unit})`, 'g');

/** Numbers that stand alone in a text, however their digits are grouped. */
export const numbersIn = (text: string): ReadonlySet<number> => {
  const ungrouped = text.replaceAll(/(?<=\d)[\u2009\u202f\u00a0]\u2060?(?=\d{3}(?!\d))/g, '');
  return new Set((ungrouped.match(number) ?? []).map(Number));
};

const { priceLists, items } = pricedDemoCatalogue;
/** What the range tells everybody: a price that is also a length or a pressure gives nothing away. */
const told = numbersIn(JSON.stringify(items));

/** List prices of items, of four digits or more, that mean nothing else. */
export const prices: ReadonlySet<number> = new Set(
  priceLists
    .flatMap(({ prices: list }) => Object.values(list))
    .map(Number)
    .filter((price) => price >= 1000 && !told.has(price)),
);

/** The list prices that occur in a text. */
export const pricesIn = (text: string): readonly number[] =>
  [...numbersIn(text)].filter((number) => prices.has(number));

/** What scripts of ours are made of, without the price lists: constants of calculations, tables of materials, years of sources. */
const own = ['libs', 'apps/web/src'].flatMap((folder) =>
  readdirSync(join(checkout, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.(tsx?|json)$/.test(file))
    .filter((file) => !/node_modules|\.test\.|fixtures|reference/.test(file))
    .map((file) => readFileSync(join(checkout, folder, file), 'utf8'))
    .filter((source) => !/"(prices|specialRates)":/.test(source)),
);

/** The library of the pages, whose flags are added up to numbers when it is built. */
const react = 'next/dist/compiled/react-dom/cjs/react-dom-client.production.js';
const sources = [...own, readFileSync(join(checkout, 'node_modules', react), 'utf8')];

/** Numbers in the sources of the scripts, however they are written. */
const written: ReadonlySet<number> = new Set(
  sources.flatMap((source) =>
    (source.match(/\d[\d_]*(\.\d+)?(e\d+)?/g) ?? []).map((one) => Number(one.replaceAll('_', ''))),
  ),
);

/** Numbers by which a bundle calls its modules: several for one that was put together, before its function. */
const modulesIn = (script: string): ReadonlySet<number> =>
  new Set(
    (script.match(/(?<![\w.])(?:\d+,)+(?=(?:\([\w$,]*\)|[\w$]+)=>)/g) ?? []).flatMap((ids) =>
      ids.split(',').map(Number),
    ),
  );

/** List prices in a script that neither its sources nor the numbers of its modules account for. */
export const leakedPricesIn = (script: string): readonly number[] => {
  const modules = modulesIn(script);
  return pricesIn(script).filter((number) => !written.has(number) && !modules.has(number));
};

/** An amount beside its item number, as in a price list; a rate of special vessels. */
const amounts: readonly RegExp[] = [
  /"?[A-Z]{2}-\d{4}"?\s*:\s*"?\d+(\.\d+)?"?\s*[,}]/,
  /(pricePerKg|machiningPerKg)"?:\s*\d/,
];

/** Fields of data that only the maker sees. */
const fields = /"(price|unitPrice|priceDifference|listPrice|prices|cost|grossMargin)":(?!null)/;

const found = (text: string, patterns: readonly RegExp[]): readonly string[] =>
  patterns.flatMap((pattern) => pattern.exec(text)?.[0] ?? []);

/** Price lists and rates in a script. */
export const priceListsIn = (script: string): readonly string[] =>
  found(script, [...amounts, ...priceLists.map(({ id }) => new RegExp(id))]);

/** Price lists, rates and commercial fields in data. An offer names the list that it rests on. */
export const commercialIn = (data: string): readonly string[] => found(data, [...amounts, fields]);
