import type { QueryOptions, Solution } from './answers.js';
import { allowWithin, leastCost } from './best.js';
import type { Core } from './core.js';
import { withMargin } from './core.js';
import { nextUp } from './keep-margin.js';
import type { Meter } from './meter.js';
import { allowChoices } from './question.js';

/** Whether a is at least as good as b in everything. */
const covers = (a: Solution, b: Solution): boolean =>
  a.cost <= b.cost && a.delay <= b.delay && a.margin >= b.margin;

/** The solutions that no other covers, by rising cost. */
function undominated(solutions: readonly Solution[]): Solution[] {
  const kept = solutions.filter((a, i) =>
    solutions.every((b, j) => i === j || !covers(b, a) || (covers(a, b) && i < j)),
  );
  return kept.sort((a, b) => a.cost - b.cost || a.delay - b.delay);
}

/**
 * From the longest delay down and, for each, from the least margin up: the cheapest solution, then the cheapest with a larger margin,
 * until none is left. What another covers is dropped at the end.
 */
export function front(
  core: Core,
  options: QueryOptions,
  meter: Meter<readonly Solution[] | 'impossible'>,
): readonly Solution[] | 'impossible' {
  const all: Solution[] = [];
  const cores = new Map<number, Core>();
  const coreFor = (margin: number): Core => {
    const known = cores.get(margin) ?? (margin === -Infinity ? core : withMargin(core, margin));
    cores.set(margin, known);
    return known;
  };
  let allowed = allowChoices(core, options.choices ?? []);
  for (;;) {
    let margin = -Infinity;
    let longest = -1;
    for (;;) {
      meter.tick();
      const found = leastCost({ core: coreFor(margin), allowed }, { meter, watch: () => undefined });
      if (!found) break;
      all.push(found);
      longest = Math.max(longest, found.delay);
      meter.known = () => undominated(all);
      meter.report(all.length);
      if (found.margin === Infinity) break;
      margin = nextUp(found.margin);
    }
    if (longest <= 0) return all.length === 0 ? 'impossible' : undominated(all);
    allowed = allowWithin({ core, allowed }, longest - 1);
  }
}
