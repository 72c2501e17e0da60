import { lowestBit } from './bits.js';
import { domainSize, openComponents } from './components.js';
import { CostShift } from './cost-shift.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';

export interface BoundedTask {
  readonly network: Network;
  /** Cost of each group of each variable: integers. */
  readonly cost: readonly Float64Array[];
}

/** The cheapest groups of some variables: `groups[i]` of `variables[i]`. */
export interface PartialSolution {
  readonly variables: readonly number[];
  readonly groups: readonly number[];
  readonly cost: number;
}

interface Part {
  /** Propagated; the search may narrow it further. */
  readonly state: Uint32Array;
  readonly variables: Int32Array;
  /** Only solutions that cost less are wanted. */
  readonly below: number;
}

interface Node extends Part {
  readonly depth: number;
  readonly shift: CostShift;
}

const NOTHING: PartialSolution = { variables: [], groups: [], cost: 0 };

/** More than shifting costs about can lose to rounding; costs are integers. */
const ROUNDING = 1e-3;

/** Sweeps of the cost shift when a component is entered, and at nodes further down. */
const FIRST_SWEEPS = 12;
const LATER_SWEEPS = 1;
/** Components of fewer variables are searched with their own costs. */
const WORTH_SHIFTING = 4;

const join = (a: PartialSolution, b: PartialSolution): PartialSolution => ({
  variables: [...a.variables, ...b.variables],
  groups: [...a.groups, ...b.groups],
  cost: a.cost + b.cost,
});

/**
 * Branch and bound over shifted costs. Wherever the open variables fall apart into components, each is solved on its own.
 */
export class BranchAndBound {
  private readonly pool: Uint32Array[] = [];

  constructor(
    private readonly task: BoundedTask,
    private readonly meter: Ticker,
  ) {}

  /**
   * The cheapest solution of one component under a propagated state, or null where none costs less than `below`.
   * @param improved told of better solutions on the way
   */
  solve(part: Part, improved?: (found: PartialSolution) => void): PartialSolution | null {
    const { network } = this.task;
    network.state = part.state;
    return this.node({ ...part, depth: 0, shift: this.enter(part.variables) }, improved);
  }

  /** The costs of a component of the network's state, shifted. */
  private enter(variables: Int32Array): CostShift {
    const shift = CostShift.start(this.task.network, variables, this.task.cost);
    if (variables.length >= WORTH_SHIFTING) for (let i = 0; i < FIRST_SWEEPS; i++) shift.sweep(i % 2 === 0);
    return shift;
  }

  private node(node: Node, improved?: (found: PartialSolution) => void): PartialSolution | null {
    const { network } = this.task;
    const { state, variables, below, depth } = node;
    this.meter.tick();
    network.state = state;
    if (!this.cutExpensive(node)) return null;
    const components = openComponents(network, variables);
    if (components.length === 0) {
      const found = this.fixed(variables);
      return found.cost < below ? found : null;
    }
    if (components.length === 1) {
      let { shift } = node;
      if (depth > 0 && (components[0]?.length ?? 0) >= WORTH_SHIFTING) {
        shift = shift.copy();
        for (let i = 0; i < LATER_SWEEPS; i++) shift.sweep(i % 2 === 0);
        if (!this.cutExpensive({ ...node, shift })) return null;
      }
      return this.branch({ ...node, shift, open: components[0] as Int32Array }, improved);
    }
    return this.split(node, components);
  }

  /** Solves the components one by one; each may cost what the others leave, at their least. */
  private split(
    { state, variables, below, depth }: Node,
    components: readonly Int32Array[],
  ): PartialSolution | null {
    const inside = new Set(components.flatMap((c) => [...c]));
    let done = this.fixed(variables.filter((x) => !inside.has(x)));
    const shifts = components.map((c) => this.enter(c));
    const bounds = components.map((c, i) =>
      Math.ceil(this.bound(c, (shifts[i] as CostShift).cost) - ROUNDING),
    );
    let open = bounds.reduce((a, b) => a + b, 0);
    if (done.cost + open >= below) return null;
    for (const [i, component] of components.entries()) {
      open -= bounds[i] as number;
      const room = below - done.cost - open;
      const shift = shifts[i] as CostShift;
      const found = this.node({ state, variables: component, below: room, depth, shift });
      if (!found) return null;
      done = join(done, found);
    }
    return done;
  }

  private branch(
    node: Node & { open: Int32Array },
    improved?: (found: PartialSolution) => void,
  ): PartialSolution | null {
    const { network } = this.task;
    const { variables, depth, shift } = node;
    network.state = node.state;
    const variable = this.pick(node.open);
    const open = this.level(2 * depth);
    const trial = this.level(2 * depth + 1);
    open.set(node.state);
    let { below } = node;
    let best: PartialSolution | null = null;
    for (;;) {
      network.state = open;
      const group = this.least(variable, shift.cost);
      if (group < 0) return best;
      trial.set(open);
      network.state = trial;
      network.fix(variable, group);
      if (network.run()) {
        const found = this.node({ state: trial, variables, below, depth: depth + 1, shift }, improved);
        if (found) {
          best = found;
          below = found.cost;
          improved?.(found);
        }
      }
      network.state = open;
      network.drop(variable, group);
      if (!network.run() || !this.cutExpensive({ ...node, below })) return best;
    }
  }

  /** Variables that are fixed, or that nothing binds: their cheapest groups. */
  private fixed(variables: Iterable<number>): PartialSolution {
    let found = NOTHING;
    for (const x of variables) {
      const group = this.least(x, this.task.cost);
      found = join(found, { variables: [x], groups: [group], cost: this.task.cost[x]?.[group] as number });
    }
    return found;
  }

  /** Cheapest group of a domain; −1 where it is empty. */
  private least(x: number, cost: readonly Float64Array[]): number {
    const { layout, state } = this.task.network;
    const costs = cost[x] as Float64Array;
    const start = layout.domain[x] as number;
    let best = -1;
    let least = Infinity;
    for (let w = start; w < (layout.domain[x + 1] as number); w++)
      for (let word = state[w] as number; word !== 0; word &= word - 1) {
        const g = ((w - start) << 5) + lowestBit(word);
        if ((costs[g] as number) >= least) continue;
        least = costs[g] as number;
        best = g;
      }
    return best;
  }

  private bound(variables: Int32Array, cost: readonly Float64Array[]): number {
    let sum = 0;
    for (const x of variables) sum += cost[x]?.[this.least(x, cost)] as number;
    return sum;
  }

  /** Drops groups that cannot be part of a cheaper solution. @returns false where none can */
  private cutExpensive({ variables, below, shift }: Node): boolean {
    // Shifted costs bound better near the place where they were shifted, the costs themselves further down.
    for (;;) {
      const cuts = [this.cut(variables, below, shift.cost), this.cut(variables, below, this.task.cost)];
      if (cuts.includes('impossible')) return false;
      if (!cuts.includes('changed')) return true;
      if (!this.task.network.run()) return false;
    }
  }

  private cut(
    variables: Int32Array,
    below: number,
    cost: readonly Float64Array[],
  ): 'impossible' | 'changed' | 'unchanged' {
    const bound = this.bound(variables, cost);
    // Costs are integers: a cheaper solution costs at least 1 less.
    const room = below - 1 + ROUNDING - bound;
    if (room < 0) return 'impossible';
    if (below === Infinity) return 'unchanged';
    let changed = false;
    for (const x of variables) {
      const costs = cost[x] as Float64Array;
      const most = room + (costs[this.least(x, cost)] as number);
      if (this.dropAbove(x, costs, most)) changed = true;
    }
    return changed ? 'changed' : 'unchanged';
  }

  private dropAbove(x: number, costs: Float64Array, most: number): boolean {
    const { network } = this.task;
    const { layout, state } = network;
    const start = layout.domain[x] as number;
    let changed = false;
    for (let w = start; w < (layout.domain[x + 1] as number); w++)
      for (let word = state[w] as number; word !== 0; word &= word - 1) {
        const g = ((w - start) << 5) + lowestBit(word);
        if ((costs[g] as number) <= most) continue;
        network.drop(x, g);
        changed = true;
      }
    return changed;
  }

  /** The variable with most failures for its size. */
  private pick(variables: Int32Array): number {
    const { network } = this.task;
    let best = -1;
    let bestScore = -1;
    for (const x of variables) {
      const size = domainSize(network, x);
      if (size < 2) continue;
      const score = (network.failures[x] as number) / Math.log(size);
      if (score <= bestScore) continue;
      bestScore = score;
      best = x;
    }
    return best;
  }

  private level(index: number): Uint32Array {
    return (this.pool[index] ??= new Uint32Array(this.task.network.layout.words));
  }
}
