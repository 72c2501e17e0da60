import { benchOf, explain, narrow, solve, type Bench } from '@flangewise/constraints';
import { createBenches } from './benches.js';
import type { Workers } from './jobs.js';
import { readSystem } from './read-system.js';
import { renderOffer } from './render-offer.js';
import type { Stock } from './stock.js';

/** After this long a search answers with what it has found [ms]. */
const searchLimitMs = 30_000;

export function createWorkers(stock: Stock): Workers {
  const benches = createBenches(stock);
  const benchFor = (priced: boolean): Bench => (priced ? benches.priced : benches.unpriced);
  return {
    solve({ inquiry, most, priced }) {
      const until = performance.now() + searchLimitMs;
      return solve(inquiry, benchFor(priced), {
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
      return narrow(system, benchOf(system, benches.priced));
    },
    explain({ system: document, priced }) {
      const system = readSystem(document);
      return explain(system, benchOf(system, benchFor(priced)));
    },
    render: (question) => renderOffer(question, benches.unpriced),
  };
}
