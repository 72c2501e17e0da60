import { assess, benchOf, type Bench, type Range } from '@flangewise/constraints';
import type { Assessment, Catalogue, PriceList, SystemInput } from '@flangewise/model';
import {
  choosePriceList,
  type PricedSystem,
  priceWishOf,
  type QuotationTrouble,
} from '@flangewise/quotation';
import type { TRPCError } from '@trpc/server';
import { type PackedCatalogue, unpackCatalogue } from '../catalogue/packed-catalogue.js';
import { refuse } from '../errors/refusal.js';
import { createBenches } from './benches.js';
import type { Jobs, RunJob } from './jobs.js';
import { readSystem } from './read-system.js';

export interface AssessOptions {
  readonly withEvidence?: boolean;
  /** An approver released what lies outside the standard range. */
  readonly specialsReleased?: boolean;
}

/** A catalogue, and everything that is computed over it. */
export interface Workshop {
  readonly catalogue: Catalogue;
  /** The list that a system is priced by. */
  priceListFor(system: PricedSystem): PriceList;
  /** The range as rules and makers of documents read it; carries no prices. */
  readonly bench: Bench;
  /** The same range with the prices and rates of one list: for offers. */
  pricedRange(priceList: string): Range;
  /** Quick enough to be done at once. */
  assess(system: SystemInput, options?: AssessOptions): Assessment;
  /** Asks for a job over this catalogue. */
  readonly run: <J extends keyof Jobs>(job: J, question: Jobs[J]['question']) => Promise<Jobs[J]['answer']>;
}

function refusePriceList({ message, path = '' }: QuotationTrouble, { offer }: PricedSystem): TRPCError {
  const field = { field: path, given: offer?.priceList ?? '', problem: message };
  return refuse('PRICE_LIST_UNKNOWN', { problem: message }, { fields: [field] });
}

export function createWorkshop(packed: PackedCatalogue, runJob: RunJob): Workshop {
  const catalogue = unpackCatalogue(packed);
  const benches = createBenches(catalogue);
  const bench = benches.unpriced;
  return {
    catalogue,
    priceListFor: (system) => {
      const list = choosePriceList(catalogue, priceWishOf(system));
      if (!list.ok) throw refusePriceList(list.error, system);
      if (list.value === undefined) throw new Error('the catalogue has no price list');
      return list.value;
    },
    bench,
    pricedRange: (priceList) => benches.priced(priceList).range,
    assess: (document, options) => {
      const system = readSystem(document);
      return assess(system, benchOf(system, bench), options);
    },
    run: (job, question) => runJob(job, { over: packed, question }),
  };
}
