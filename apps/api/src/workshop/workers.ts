import { readCatalogue } from '@flangewise/catalogue';
import { differenceOf, writeExport } from '@flangewise/catalogue/exchange';
import { audit, benchOf, explain, narrow, solve, type Bench } from '@flangewise/constraints';
import type { Catalogue } from '@flangewise/model';
import { writeProgress } from '../catalogue/audit-meter.js';
import { type PackedCatalogue, unpackCatalogue } from '../catalogue/packed-catalogue.js';
import { readFile } from '../catalogue/read-file.js';
import { createBenches, type Benches } from './benches.js';
import type { Workers } from './jobs.js';
import { keepLast } from './keep-last.js';
import { readSystem } from './read-system.js';
import { renderOffer } from './render-offer.js';
import { renderRules } from './render-rule-book.js';

/** After this long a search answers with what it has found [ms]. */
const searchLimitMs = 30_000;

/** The catalogue in force, and one that somebody looks at meanwhile. */
const mostStocks = 2;

interface Stock {
  readonly catalogue: Catalogue;
  readonly benches: Benches;
}

function openStock(packed: PackedCatalogue): Stock {
  const catalogue = unpackCatalogue(packed);
  let benches: Benches | undefined;
  return {
    catalogue,
    get benches() {
      return (benches ??= createBenches(catalogue));
    },
  };
}

/** Does the jobs in this thread. Catalogues that were asked for last keep their tables between questions. */
export function createWorkers(): Workers {
  const stocks = keepLast<Stock>(mostStocks);
  const stockOf = (packed: PackedCatalogue): Stock => stocks.get(packed.key, () => openStock(packed));
  const benchFor = (packed: PackedCatalogue, priceList: string | null): Bench => {
    const { benches } = stockOf(packed);
    return priceList === null ? benches.unpriced : benches.priced(priceList);
  };
  return {
    solve({ over, question: { inquiry, most, priceList } }) {
      const until = performance.now() + searchLimitMs;
      return solve(inquiry, benchFor(over, priceList), {
        ...(most === undefined ? {} : { most }),
        signal: {
          get aborted() {
            return performance.now() > until;
          },
        },
      });
    },
    narrow({ over, question }) {
      const system = readSystem(question.system);
      return narrow(system, benchOf(system, benchFor(over, null)));
    },
    explain({ over, question }) {
      const system = readSystem(question.system);
      return explain(system, benchOf(system, benchFor(over, question.priceList)));
    },
    render: ({ over, question }) => renderOffer(question, benchFor(over, null)),
    audit: ({ over, question: { progress } }) =>
      audit(benchFor(over, null), (now) => writeProgress(progress, now)),
    check({ over }) {
      const read = readCatalogue(stockOf(over).catalogue);
      return read.ok ? [] : read.error;
    },
    compare: ({ over, question }) =>
      differenceOf(stockOf(question.before).catalogue, stockOf(over).catalogue),
    readFile: ({ over, question }) => readFile(stockOf(over).catalogue, question),
    ruleBook: ({ over }) => renderRules(stockOf(over).catalogue.maker),
    writeFile: ({ over, question }) => writeExport(question.format, stockOf(over).catalogue),
  };
}
