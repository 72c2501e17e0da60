import type { BoxPool } from './box-pool.js';
import { BoxSearch } from './box-search.js';
import { openComponents } from './components.js';
import { showByDiagram } from './diagram-witnesses.js';
import type { Diagrams } from './diagrams.js';
import { Forest } from './forest.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';
import { firstGroup } from './search.js';
import { Witnesses } from './witnesses.js';

export interface NarrowedState {
  /** Domains without the groups shown to be invalid. */
  readonly state: Uint32Array;
  readonly witnesses: Witnesses;
}

export interface NarrowTask {
  readonly network: Network;
  readonly state: Uint32Array;
  readonly boxes: BoxPool;
  readonly diagrams: Diagrams | null;
  /** Only these variables are of interest; all by default. */
  readonly variables?: readonly number[];
}

/** Shows groups of one state by boxes. */
class Showing {
  readonly witnesses: Witnesses;
  private readonly search: BoxSearch;
  private readonly trial: Uint32Array;
  private readonly wanted: readonly number[];

  constructor(
    private readonly task: NarrowTask,
    readonly state: Uint32Array,
    meter: Ticker,
  ) {
    this.witnesses = new Witnesses(task.network.layout);
    this.search = new BoxSearch(task.network, meter);
    this.trial = new Uint32Array(state.length);
    this.wanted = task.variables ?? [...task.network.layout.size.keys()];
  }

  /** Whether a box has groups of the variables of interest that are left and not yet shown. */
  private isOfUse(box: Uint32Array): boolean {
    const { domain } = this.task.network.layout;
    const { shown } = this.witnesses;
    for (const x of this.wanted)
      for (let w = domain[x] as number; w < (domain[x + 1] as number); w++)
        if (((this.state[w] as number) & (box[w] as number) & ~(shown[w] as number)) !== 0) return true;
    return false;
  }

  /** Shows what is left of a box of an earlier query. @returns whether anything is */
  reuse(box: Uint32Array): boolean {
    if (!this.isOfUse(box)) return false;
    const { network } = this.task;
    const { domain, variables } = network.layout;
    const { state, trial } = this;
    trial.set(state);
    for (let x = 0; x < variables; x++) {
      let any = 0;
      for (let w = domain[x] as number; w < (domain[x + 1] as number); w++) {
        const left = (state[w] as number) & (box[w] as number);
        any |= left;
        trial[w] = left;
      }
      if (any === 0) return false;
    }
    network.state = trial;
    for (let x = 0; x < variables; x++) network.touch(x);
    return network.run() && this.show(trial);
  }

  /** Finds a box within a propagated state, and shows it. */
  show(trial: Uint32Array, near: { among?: Iterable<number>; around?: number } = {}): boolean {
    const { network, boxes } = this.task;
    const { witnesses } = this;
    const among = [...(near.among ?? network.layout.size.keys())];
    const box = this.search.find(trial, { ...near, avoid: witnesses.shown, among });
    if (!box) return false;
    witnesses.addBox(box, among);
    boxes.add(box.slice(0, network.layout.domain.at(-1)));
    return true;
  }

  /** Shows or drops one group of a component. */
  decide(x: number, group: number, component: Int32Array): void {
    const { network } = this.task;
    const { state, trial } = this;
    trial.set(state);
    network.state = trial;
    network.fix(x, group);
    if (network.run() && this.show(trial, { among: component, around: x })) return;
    network.state = state;
    network.drop(x, group);
    network.run();
  }
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
  const { network, boxes, variables } = task;
  const state = Uint32Array.from(task.state);
  network.state = state;
  if (Forest.of(network).knot([...network.layout.size.keys()]) < 0) {
    const witnesses = new Witnesses(network.layout);
    witnesses.addBox(state, network.layout.size.keys());
    return { state, witnesses };
  }
  const showing = new Showing(task, state, meter);
  const { witnesses } = showing;
  const diagram = variables ? null : task.diagrams?.whole(meter);
  network.state = state;
  let isConsistent = false;
  if (diagram) {
    const shown = showByDiagram({ network, known: diagram, witnesses });
    if (!shown) return null;
    isConsistent = shown.found;
    if (diagram.leftOut.areSettled()) return { state, witnesses };
  }
  for (const box of boxes.latest()) if (showing.reuse(box)) isConsistent = true;
  network.state = state;
  const components = openComponents(network);
  if (!isConsistent)
    for (const component of components)
      if (!showing.show(Uint32Array.from(state), { among: component })) return null;
  const wanted = variables ? new Set(variables) : null;
  for (const component of components)
    for (const x of component) {
      if (wanted && !wanted.has(x)) continue;
      for (;;) {
        network.state = state;
        const group = firstGroup(network, x, witnesses.shown);
        if (group < 0) break;
        watch({ state, witnesses });
        meter.tick();
        showing.decide(x, group, component);
      }
    }
  return { state, witnesses };
}
