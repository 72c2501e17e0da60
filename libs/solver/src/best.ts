import type { BestOptions, Objective, Solution } from './answers.js';
import { cheapest } from './cheapest.js';
import type { Core } from './core.js';
import { withMargin } from './core.js';
import { groupCosts, valuesOf } from './group-costs.js';
import { nextUp } from './keep-margin.js';
import type { Meter, Ticker } from './meter.js';
import { ProblemError } from './problem.js';
import type { Allowed } from './question.js';
import { allowChoices, enter } from './question.js';
import { Search } from './search.js';
import { verified } from './verified.js';

/** How a search for the best runs. */
export interface BestRun {
  readonly meter: Ticker;
  /** Told of every better solution on the way. */
  readonly watch: (solution: Solution) => void;
}

/** What is asked: a core, the values allowed, and (for costs) only solutions that cost less. */
export interface Target {
  readonly core: Core;
  readonly allowed: Allowed;
  readonly below?: number;
}

/** The allowed values that are delivered within some days. */
export function allowWithin(target: Target, days: number): Allowed {
  return target.core.problem.variables.map(({ size, delay }, x) => {
    const flags = target.allowed[x] ?? null;
    if (!delay) return days < 0 ? new Uint8Array(size) : flags;
    return Uint8Array.from(delay, (d, v) => (d <= days && (!flags || flags[v] === 1) ? 1 : 0));
  });
}

/** Every delay that some allowed value has, ascending; 0 stands for no delay at all. */
function delaysOf({ core, allowed }: Target): number[] {
  const delays = new Set<number>([0]);
  for (const [x, { delay }] of core.problem.variables.entries())
    for (const [v, d] of (delay ?? []).entries())
      if (!allowed[x] || allowed[x][v] === 1) delays.add(Math.max(0, d));
  return [...delays].sort((a, b) => a - b);
}

/** Some solution, or null. */
export function anySolution(target: Target, meter: Ticker): Solution | null {
  const { core, allowed } = target;
  const state = enter(core, allowed);
  const groups = state && new Search(core.network, meter).solve(state);
  return groups && verified(core, valuesOf(groupCosts(core, allowed), groups));
}

/** The cheapest solution, or null. */
export function leastCost(target: Target, run: BestRun): Solution | null {
  const { core, allowed, below = Infinity } = target;
  const state = enter(core, allowed);
  if (!state) return null;
  const costs = groupCosts(core, allowed);
  const watch = (groups: Int32Array): void => {
    run.watch(verified(core, valuesOf(costs, groups)));
  };
  const found = cheapest(
    { network: core.network, state, cost: costs.cost, below, diagrams: core.diagrams, watch },
    run.meter,
  );
  return found && verified(core, valuesOf(costs, found.groups));
}

/** The cheapest of the fastest solutions, or null. */
function leastDelay(target: Target, run: BestRun): Solution | null {
  const first = anySolution(target, run.meter);
  if (!first) return null;
  run.watch(first);
  const delays = delaysOf(target).filter((d) => d <= first.delay);
  let low = 0;
  let high = delays.length - 1;
  while (low < high) {
    run.meter.tick();
    const middle = (low + high) >>> 1;
    const allowed = allowWithin(target, delays[middle] as number);
    const found = anySolution({ core: target.core, allowed }, run.meter);
    if (found) {
      run.watch(found);
      high = delays.findIndex((d) => d >= found.delay);
    } else low = middle + 1;
  }
  return leastCost({ core: target.core, allowed: allowWithin(target, delays[low] as number) }, run);
}

/** Bisections before the search for the largest margin goes on from solution to solution. */
const BISECTIONS = 8;

/** The cheapest of the solutions with the largest least margin, or null. */
function largestMargin(target: Target, run: BestRun): Solution | null {
  const first = anySolution(target, run.meter);
  if (!first) return null;
  run.watch(first);
  let reached = first.margin;
  let ceiling = Infinity;
  for (let round = 0; reached < ceiling && reached < Infinity; round++) {
    run.meter.tick();
    const next = nextUp(reached);
    const middle = ceiling === Infinity ? reached + Math.max(1, Math.abs(reached)) : (reached + ceiling) / 2;
    const wanted = round < BISECTIONS && middle > next ? middle : next;
    const found = anySolution({ ...target, core: withMargin(target.core, wanted) }, run.meter);
    if (found) {
      run.watch(found);
      reached = found.margin;
    } else ceiling = wanted === next ? reached : wanted;
  }
  const core = reached === -Infinity ? target.core : withMargin(target.core, reached);
  return leastCost({ ...target, core }, run);
}

/** Least cost·(total cost) + delay·(total delay): the cheapest for each delay, from the longest down. */
function leastMix(target: Target, weights: { cost: number; delay: number }, run: BestRun): Solution | null {
  const value = (s: Solution): number => weights.cost * s.cost + weights.delay * s.delay;
  const seen: Solution[] = [];
  const best = (): Solution | null => seen.at(-1) ?? null;
  const improve = (solution: Solution): void => {
    const present = best();
    if (present && value(solution) >= value(present)) return;
    seen.push(solution);
    run.watch(solution);
  };
  let { allowed } = target;
  for (;;) {
    run.meter.tick();
    // Whatever its delay, a solution that beats the best costs less than this.
    const present = best();
    const below = present && weights.cost > 0 ? Math.floor(value(present) / weights.cost) + 1 : Infinity;
    const found = leastCost({ core: target.core, allowed, below }, { meter: run.meter, watch: improve });
    if (!found) return best();
    improve(found);
    if (found.delay <= 0) return best();
    allowed = allowWithin(target, found.delay - 1);
  }
}

/** The best solution by an objective, with proof, or null. Among equals the search order decides, the same every time. */
export function bestSolution(target: Target, objective: Objective, run: BestRun): Solution | null {
  switch (objective.kind) {
    case 'cost':
      return leastCost(target, run);
    case 'delay':
      return leastDelay(target, run);
    case 'margin':
      return largestMargin(target, run);
    case 'mix':
      if (!(objective.cost >= 0 && objective.delay >= 0))
        throw new ProblemError(
          `weights of a mix are 0 or more; given: cost ${String(objective.cost)}, delay ${String(objective.delay)}`,
        );
      return leastMix(target, objective, run);
  }
}

export function best(
  core: Core,
  options: BestOptions,
  meter: Meter<Solution | 'impossible'>,
): Solution | 'impossible' {
  const target = { core, allowed: allowChoices(core, options.choices ?? []) };
  const watch = (solution: Solution): void => {
    meter.known = () => solution;
  };
  return bestSolution(target, options.objective, { meter, watch }) ?? 'impossible';
}
