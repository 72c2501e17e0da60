import { type Catalogue, type PriceList, succeed } from '@flangewise/model';
import type { Bench } from '@flangewise/constraints';
import { type Options, textOption } from '../command.js';
import { readJson } from '../input/read-json.js';
import type { Terminal } from '../terminal.js';
import { invalidFields, type OrRefusal, refuse } from '../trouble.js';

/** The range in use, with the prices of one list where it has any. */
export interface OpenRange {
  readonly catalogue: Catalogue;
  readonly bench: Bench;
  readonly priceList?: PriceList;
  readonly notes: readonly string[];
}

/** Which prices are asked for: a list by its id, else one in a currency, else the first. */
export interface PriceWish {
  readonly priceList?: string | undefined;
  readonly currency?: string | undefined;
}

const loadCatalogue = async (file: string | undefined, terminal: Terminal): Promise<OrRefusal<Catalogue>> => {
  if (file === undefined) {
    const { pricedDemoCatalogue } = await import('@flangewise/catalogue/prices');
    return succeed(pricedDemoCatalogue);
  }
  const document = await readJson(file, terminal);
  if (!document.ok) return document;
  const { readCatalogue } = await import('@flangewise/catalogue');
  const read = readCatalogue(document.value);
  return read.ok ? read : refuse(...invalidFields(read.error));
};

const findList = (
  { priceLists }: Catalogue,
  { priceList, currency }: PriceWish,
): OrRefusal<PriceList | undefined> => {
  if (priceList === undefined)
    return succeed(priceLists.find((list) => list.currency === currency) ?? priceLists[0]);
  const found = priceLists.find((list) => list.id === priceList);
  return found === undefined
    ? refuse({
        code: 'QUOTE_UNKNOWN_PRICE_LIST',
        path: 'priceList',
        given: priceList,
        message: `not a price list of this catalogue; there ${priceLists.length === 0 ? 'is none' : `are ${priceLists.map((list) => list.id).join(', ')}`}`,
      })
    : succeed(found);
};

const benches = new WeakMap<Catalogue, Map<string, Pick<OpenRange, 'bench' | 'notes'>>>();

/** A bench keeps its tables between questions, so the same catalogue and prices get the same one. */
const benchFor = async (
  catalogue: Catalogue,
  list: PriceList | undefined,
): Promise<Pick<OpenRange, 'bench' | 'notes'>> => {
  const known = benches.get(catalogue) ?? new Map<string, Pick<OpenRange, 'bench' | 'notes'>>();
  benches.set(catalogue, known);
  const found = known.get(list?.id ?? '');
  if (found !== undefined) return found;
  const { createBench, rangeOf, ruleBook } = await import('@flangewise/constraints');
  const { additivePrices, deliveryDaysOf } = await import('@flangewise/quotation');
  const prices = list === undefined ? undefined : additivePrices(catalogue, list.id);
  const commercial = {
    deliveryDays: deliveryDaysOf,
    ...(prices?.ok === true ? { prices: prices.value } : {}),
  };
  const opened = {
    bench: createBench(rangeOf(catalogue, commercial), ruleBook),
    notes:
      prices === undefined
        ? ['The catalogue holds no price list: answers come without prices.']
        : prices.ok
          ? []
          : [`Answers come without prices: ${prices.error.message}.`],
  };
  known.set(list?.id ?? '', opened);
  return opened;
};

/** The demo range, or the catalogue of `--catalogue`: read, checked and ready for questions. */
export const openRange = async (
  options: Options,
  wish: PriceWish,
  terminal: Terminal,
): Promise<OrRefusal<OpenRange>> => {
  const catalogue = await loadCatalogue(textOption(options, 'catalogue'), terminal);
  if (!catalogue.ok) return catalogue;
  const list = findList(catalogue.value, wish);
  if (!list.ok) return list;
  const { bench, notes } = await benchFor(catalogue.value, list.value);
  return succeed({
    catalogue: catalogue.value,
    bench,
    notes,
    ...(list.value === undefined ? {} : { priceList: list.value }),
  });
};
