import { openComponents } from './components.js';
import { showByDiagram } from './diagram-witnesses.js';
import type { Diagrams } from './diagrams.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { firstGroup, Search } from './search.js';
import type { SolutionPool } from './solution-pool.js';
import { Witnesses } from './witnesses.js';

/** Known solutions that show nothing new, one after another, before the rest are passed over. */
const MOST_IDLE = 8;

export interface NarrowedState {
  /** Domains without the groups shown to be invalid. */
  readonly state: Uint32Array;
  readonly witnesses: Witnesses;
}

export interface NarrowTask {
  readonly network: Network;
  readonly state: Uint32Array;
  readonly pool: SolutionPool;
  readonly diagrams: Diagrams | null;
  /** Only these variables are of interest; all by default. */
  readonly variables?: readonly number[];
}

/**
 * Takes out of a propagated state every group that is part of no solution.
 * `watch` is told how far it is; the state it is given holds the groups not yet refuted.
 * @returns null where there is no solution at all
 */
export function narrowState(
  task: NarrowTask,
  meter: Ticker,
  watch: (progress: NarrowedState) => void,
): NarrowedState | null {
  const { network, pool, variables } = task;
  const state = Uint32Array.from(task.state);
  const witnesses = new Witnesses(network);
  const search = new Search(network, meter);
  const known = pool.within(network, state);
  let found = known[0];
  const diagram = variables ? null : task.diagrams?.whole(meter);
  if (diagram) {
    network.state = state;
    const shown = showByDiagram({ network, known: diagram, witnesses });
    if (!shown) return null;
    if (shown.solution) pool.add(shown.solution);
    found = shown.solution ?? pool.within(network, state)[0];
  } else markKnown(known, { state, witnesses, variables: [...(variables ?? network.layout.size.keys())] });
  if (!found) {
    const solved = search.solve(state);
    if (!solved) return null;
    found = solved;
    pool.add(found);
    witnesses.mark(found, state);
  }
  let last: Int32Array = found;
  const wanted = variables ? new Set(variables) : null;
  network.state = state;
  const trial = new Uint32Array(state.length);
  for (const component of openComponents(network))
    for (const x of component) {
      if (wanted && !wanted.has(x)) continue;
      for (;;) {
        network.state = state;
        const group = firstGroup(network, x, witnesses.shown);
        if (group < 0) break;
        watch({ state, witnesses });
        meter.tick();
        trial.set(state);
        network.state = trial;
        network.fix(x, group);
        const solution = Int32Array.from(last);
        const part = { state: trial, variables: component, solution };
        const options = { avoid: witnesses.shown, hint: last };
        if (network.run() && search.solveComponent(part, options)) {
          last = solution;
          pool.add(solution);
          witnesses.mark(solution, state);
        } else {
          network.state = state;
          network.drop(x, group);
          network.run();
        }
      }
    }
  return { state, witnesses };
}

/** Shows what known solutions show, until a number of them show nothing new. */
function markKnown(
  known: readonly Int32Array[],
  { state, witnesses, variables }: NarrowedState & { variables: readonly number[] },
): void {
  let idle = 0;
  for (const solution of known) {
    if (idle === MOST_IDLE || variables.every((x) => witnesses.covers(x, state))) return;
    idle = witnesses.mark(solution, state) ? 0 : idle + 1;
  }
}
