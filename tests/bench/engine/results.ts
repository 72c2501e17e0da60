import type { EngineRun, Time } from './engine-run.js';
import type { Plan } from './plan.js';
import type { EngineResult, PeerName, PeerStep } from './subject.js';

/** What was seen of one instance. */
export interface Record {
  readonly seed: number;
  /** Null where it did not finish in time. */
  readonly engine: EngineResult | null;
  readonly peers: readonly { readonly subject: PeerName; readonly steps: readonly PeerStep[] }[];
  readonly browser: EngineRun | null;
}

export type Results = Map<Plan, Record[]>;

/** Values that some share of a list stays at or below; null where that is an answer not proved in time. */
export function quantile(times: readonly Time[], share: number): Time | undefined {
  const sorted = [...times].sort((a, b) => (a ?? Infinity) - (b ?? Infinity));
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

/** Where a peer finds other valid options, or another cost, than the engine. */
export function disagreements(results: Results): string[] {
  const found: string[] = [];
  for (const [{ size, shape }, records] of results)
    for (const { seed, engine, peers, browser } of records) {
      const name = `${size} ${shape} ${String(seed)}`;
      if (
        browser &&
        engine &&
        browser.cost !== null &&
        engine.run.cost !== null &&
        browser.cost !== engine.run.cost
      )
        found.push(`${name}: cost in the browser`);
      for (const { subject, steps } of peers) {
        const edits = steps.filter((s) => s.step === 'edit');
        for (const [i, edit] of edits.entries()) {
          const own = engine?.run.shared[i]?.valid;
          if (own && own !== edit.valid)
            found.push(`${name}: ${subject}, valid options of edit ${String(i)}`);
        }
        const best = steps.find((s) => s.step === 'best');
        if (best && engine?.run.cost && engine.run.cost !== best.cost)
          found.push(`${name}: ${subject}, cost`);
      }
    }
  return found;
}
