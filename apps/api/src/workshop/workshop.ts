import { assess, benchOf, type Bench, type Range } from '@flangewise/constraints';
import type { Assessment, Catalogue, PriceList, SystemInput } from '@flangewise/model';
import { createBenches } from './benches.js';
import type { Jobs } from './jobs.js';
import { readSystem } from './read-system.js';
import type { Stock } from './stock.js';

/** Asks for a job, wherever it is done. */
export type RunJob = <J extends keyof Jobs>(
  job: J,
  question: Jobs[J]['question'],
) => Promise<Jobs[J]['answer']>;

export interface AssessOptions {
  readonly withEvidence?: boolean;
  /** An approver released what lies outside the standard range. */
  readonly specialsReleased?: boolean;
}

/** The catalogue in force, and everything that is computed over it. */
export interface Workshop {
  readonly catalogue: Catalogue;
  readonly priceList: PriceList;
  /** The range as rules and makers of documents read it; carries no prices. */
  readonly bench: Bench;
  /** The same range with list prices and rates of specials: for offers. */
  readonly pricedRange: Range;
  /** Quick enough to be done at once. */
  assess(system: SystemInput, options?: AssessOptions): Assessment;
  readonly run: RunJob;
}

export function createWorkshop(stock: Stock, run: RunJob): Workshop {
  const { catalogue, priceListId } = stock;
  const priceList = catalogue.priceLists.find((list) => list.id === priceListId);
  if (priceList === undefined) throw new Error(`the catalogue has no price list ${priceListId}`);
  const { priced, unpriced: bench } = createBenches(stock);
  return {
    catalogue,
    priceList,
    bench,
    pricedRange: priced.range,
    assess: (document, options) => {
      const system = readSystem(document);
      return assess(system, benchOf(system, bench), options);
    },
    run,
  };
}
