import { type Catalogue, type PriceList, succeed } from '@flangewise/model';
import type { Bench } from '@flangewise/constraints';
import type { PricedSystem } from '@flangewise/quotation';
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

const benches = new WeakMap<Catalogue, Map<string, Pick<OpenRange, 'bench' | 'notes'>>>();

/** A bench keeps its tables between questions, so the same catalogue and prices get the same one. */
const benchFor = async (
  catalogue: Catalogue,
  list: PriceList | undefined,
): Promise<Pick<OpenRange, 'bench' | 'notes'>> => {
  const opened = benches.get(catalogue) ?? new Map<string, Pick<OpenRange, 'bench' | 'notes'>>();
  benches.set(catalogue, opened);
  const found = opened.get(list?.id ?? '');
  if (found !== undefined) return found;
  const { createBench, rangeOf, ruleBook } = await import('@flangewise/constraints');
  const { commercialOf, deliveryDaysOf } = await import('@flangewise/quotation');
  const commercial = list === undefined ? undefined : commercialOf(catalogue, list);
  const known = commercial?.ok === true ? commercial.value : { deliveryDays: deliveryDaysOf };
  const made = {
    bench: createBench(rangeOf(catalogue, known), ruleBook),
    notes:
      commercial === undefined
        ? ['The catalogue holds no price list: answers come without prices.']
        : commercial.ok
          ? []
          : [`Answers come without prices: ${commercial.error.message}.`],
  };
  opened.set(list?.id ?? '', made);
  return made;
};

/** The demo range, or the catalogue of `--catalogue`: read, checked and ready for questions. */
export const openRange = async (
  options: Options,
  system: PricedSystem,
  terminal: Terminal,
): Promise<OrRefusal<OpenRange>> => {
  const catalogue = await loadCatalogue(textOption(options, 'catalogue'), terminal);
  if (!catalogue.ok) return catalogue;
  const { choosePriceList, priceWishOf } = await import('@flangewise/quotation');
  const list = choosePriceList(catalogue.value, priceWishOf(system));
  if (!list.ok) return refuse(list.error);
  const { bench, notes } = await benchFor(catalogue.value, list.value);
  return succeed({
    catalogue: catalogue.value,
    bench,
    notes,
    ...(list.value === undefined ? {} : { priceList: list.value }),
  });
};
