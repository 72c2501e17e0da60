import { benchOf, explain, narrow, solve, type Bench } from '@flangewise/constraints';
import { createBenches } from './benches.js';
import type { Workers } from './jobs.js';
import { readSystem } from './read-system.js';
import { renderOffer } from './render-offer.js';
import type { Stock } from './stock.js';

/** After this long a search answers with what it has found [ms]. */
const searchLimitMs = 30_000;

export function createWorkers({ catalogue }: Stock): Workers {
  const benches = createBenches(catalogue);
  const benchFor = (priceList: string | null): Bench =>
    priceList === null ? benches.unpriced : benches.priced(priceList);
  return {
    solve({ inquiry, most, priceList }) {
      const until = performance.now() + searchLimitMs;
      return solve(inquiry, benchFor(priceList), {
        ...(most === undefined ? {} : { most }),
        signal: {
          get aborted() {
            return performance.now() > until;
          },
        },
      });
    },
    narrow({ system: document }) {
      const system = readSystem(document);
      return narrow(system, benchOf(system, benches.unpriced));
    },
    explain({ system: document, priceList }) {
      const system = readSystem(document);
      return explain(system, benchOf(system, benchFor(priceList)));
    },
    render: (question) => renderOffer(question, benches.unpriced),
  };
}
