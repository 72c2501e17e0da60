import { demoCatalogue } from '@flangewise/catalogue';
import { benchOf, createBench, narrow, rangeOf, ruleBook, solve } from '@flangewise/constraints';
import { type InquiryInput, readDocument, systemSchema } from '@flangewise/model';
import { begun, reopened } from './edits.js';

export interface NarrowTimes {
  readonly items: number;
  /** One choice made after the other, from none to all; then each opened again [ms]. */
  readonly edits: readonly number[];
}

// Bundled, and run in a Web Worker: answers one inquiry with the times of narrowing after each edit.
self.addEventListener('message', ({ data }: MessageEvent<InquiryInput>) => {
  const bench = createBench(rangeOf(demoCatalogue, { deliveryDays: () => 0 }), ruleBook);
  const read = readDocument(systemSchema, solve(data, bench, { most: 1 }).candidates[0]?.system);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  const system = read.value;
  const own = benchOf(system, bench);
  const slots = Object.keys(system.sets[0]?.choices ?? {}).length;
  const steps = Array.from({ length: slots }, (_, k) => k);
  const states = [...steps.map((k) => begun(system, k + 1)), ...steps.map((k) => reopened(system, k))];
  // What nothing is chosen of is there before the first edit.
  narrow(begun(system, 0), own);
  const edits = states.map((state) => {
    const start = performance.now();
    narrow(state, own);
    return performance.now() - start;
  });
  self.postMessage({ items: demoCatalogue.items.length, edits } satisfies NarrowTimes);
});
