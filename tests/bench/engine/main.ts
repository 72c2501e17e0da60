/**
 * Speeds of the engine beside general-purpose solvers on the same instances, goal beside value: `npm run bench:engine`.
 *
 *   --sizes S,M,L   --shapes plain,full   --seeds 1,2,3   only these (seeds are drawn beside the fixed ones otherwise)
 *   --processor     processor time instead of the clock, for a machine that does other work meanwhile
 *   --no-peers      the engine alone
 *   --browser       also the engine in a Web Worker of Chromium, S and M
 *
 * Engine and peers take turns, each in a process of its own. An answer that was not proved in time counts as a miss.
 */
import { loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import type { SizeName } from './catalogue.js';
import type { Instance } from './engine-run.js';
import type { ShapeName } from './make-problem.js';
import { plans } from './plan.js';
import { disagreements, type Record, type Results } from './results.js';
import { runInBrowser } from './run-in-browser.js';
import { runSubject } from './run-subject.js';
import { tableOf } from './table.js';

const { values } = parseArgs({
  options: {
    sizes: { type: 'string' },
    shapes: { type: 'string' },
    seeds: { type: 'string' },
    processor: { type: 'boolean', default: false },
    'no-peers': { type: 'boolean', default: false },
    browser: { type: 'boolean', default: false },
  },
});

const listed = <T extends string>(text: string | undefined): T[] | null =>
  (text?.split(',') as T[] | undefined) ?? null;
const fixed = listed(values.seeds)?.map(Number) ?? null;
const drawn = fixed ? [] : Array.from({ length: 3 }, () => 11 + Math.floor(Math.random() * 1e6));
const { processor } = values;

process.stdout.write(
  `seeds drawn: ${drawn.join(', ') || 'none'}; load of the machine: ${loadavg()
    .map((x) => x.toFixed(1))
    .join(' ')}; ${processor ? 'processor time' : 'time by the clock'}\n`,
);

const results: Results = new Map();
for (const plan of plans) {
  if (listed<SizeName>(values.sizes)?.includes(plan.size) === false) continue;
  if (listed<ShapeName>(values.shapes)?.includes(plan.shape) === false) continue;
  const records: Record[] = [];
  results.set(plan, records);
  const seeds = fixed ?? [...plan.seeds, ...(plan.drawn ? drawn : [])];
  for (const [index, seed] of seeds.entries()) {
    const instance: Instance = { size: plan.size, shape: plan.shape, seed };
    const task = { instance, limits: plan.limits, processor };
    const engine = runSubject({ ...task, subject: 'engine' }, plan.engineMs);
    const shared = engine?.run.shared ?? [];
    const peersHere = !values['no-peers'] && index < plan.peerSeeds;
    const peers = peersHere
      ? plan.peers.map((subject) => ({
          subject,
          steps: runSubject({ ...task, subject, shared }, plan.peerMs),
        }))
      : [];
    const browser =
      values.browser && index < 3 && plan.size !== 'L' ? await runInBrowser(instance, plan.limits) : null;
    records.push({ seed, engine, peers, browser });
    process.stderr.write('.');
  }
}
process.stderr.write('\n');
process.stdout.write(
  `${tableOf(results)}\nload of the machine at the end: ${loadavg()[0]?.toFixed(1) ?? ''}\n`,
);
const wrong = disagreements(results);
process.stdout.write(wrong.length === 0 ? 'engine and peers agree\n' : `DISAGREE: ${wrong.join('; ')}\n`);
process.exit(wrong.length === 0 ? 0 : 1);
