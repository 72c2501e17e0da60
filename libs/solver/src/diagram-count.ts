import type { SolverDiagram } from './compile-diagram.js';
import type { Inequality } from './constraint.js';
import type { Loads } from './convolution.js';
import { addLoads } from './convolution.js';
import { forEachGroup } from './layout.js';
import type { Ticker } from './meter.js';
import type { Network } from './network.js';

/** An inequality in whole numbers over the groups of the diagram, shifted so that every weight is 0 or more. */
interface Tally {
  /** By variable; null where it adds nothing. */
  readonly weights: readonly (Float64Array | null)[];
  readonly most: number;
  readonly greatest: Float64Array;
  /** Place value of this tally in a key. */
  readonly stride: number;
  readonly range: number;
}

/** Pairs of loads beyond which a count by loads is given up. */
const MOST_WORK = 300_000;

/** Loads of some variables, and by tally the greatest they can be. */
interface Part {
  readonly loads: Loads;
  readonly greatest: Float64Array;
}

const NOTHING: Loads = new Map([[0, 1n]]);

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/** Greatest common divisor of the steps between the weights of some positions. */
function stepOf(lists: readonly (readonly number[])[]): number {
  let step = 0;
  for (const list of lists) for (const w of list) step = divisor(step, w - (list[0] as number));
  return Math.abs(step);
}

/**
 * Divides weights by their common step. One position, such as the one that sets a limit, may be out of step: what it leaves to
 * the others is rounded down to their step.
 */
function inSteps(lists: readonly number[][], most: number): { lists: number[][]; most: number } {
  let step = stepOf(lists);
  let odd = -1;
  for (const p of lists.keys()) {
    const others = stepOf(lists.filter((_, q) => q !== p));
    if (others > step) [step, odd] = [others, p];
  }
  if (step <= 1) return { lists: [...lists], most };
  let rest = most;
  for (const [p, list] of lists.entries()) if (p !== odd) rest -= list[0] as number;
  if (odd < 0)
    return {
      lists: lists.map((list) => list.map((w) => (w - (list[0] as number)) / step)),
      most: Math.floor(rest / step),
    };
  return {
    lists: lists.map((list, p) =>
      list.map((w) => (p === odd ? -Math.floor((rest - w) / step) : (w - (list[0] as number)) / step)),
    ),
    most: 0,
  };
}

function tallyOf(
  network: Network,
  inequality: Inequality,
  from: { views: Int32Array; covers: Uint8Array; stride: number },
): Tally {
  const { layout } = network;
  const places = Array.from(from.views, (id, p) => {
    const { variable, classOf } = network.view(id);
    const present: number[] = [];
    forEachGroup(layout, { state: network.state, variable }, (g) => present.push(g));
    return {
      variable,
      present,
      weights: present.map((g) => inequality.weights[p]?.[classOf[g] as number] as number),
    };
  });
  const stepped = inSteps(
    places.map((p) => p.weights),
    inequality.most,
  );
  let { most } = stepped;
  const weights: (Float64Array | null)[] = Array.from(layout.size, () => null);
  const greatest = new Float64Array(layout.variables);
  for (const [p, { variable, present }] of places.entries()) {
    const list = stepped.lists[p] as number[];
    const least = Math.min(...list);
    most -= least;
    if (from.covers[variable] === 0) continue;
    const own = new Float64Array(layout.size[variable] as number);
    for (const [i, g] of present.entries()) own[g] = (list[i] as number) - least;
    weights[variable] = own;
    greatest[variable] = Math.max(...list) - least;
  }
  const range = greatest.reduce((a, b) => a + b, 1);
  return { weights, most, greatest, stride: from.stride, range };
}

/** The inequalities of the constraints left out; null where one has none, or they are too many to tell apart. */
function talliesOf(network: Network, { leftOut, covers }: SolverDiagram): Tally[] | null {
  const tallies: Tally[] = [];
  let stride = 1;
  for (const index of leftOut.indexes) {
    if (network.isSettled(index)) continue;
    const constraint = network.constraints[index];
    const inequalities = constraint?.wholeInequalities;
    if (!constraint || !inequalities) return null;
    for (const inequality of inequalities) {
      const tally = tallyOf(network, inequality, { views: constraint.views, covers, stride });
      if (tally.greatest.reduce((a, b) => a + b, 0) <= tally.most) continue;
      tallies.push(tally);
      stride *= tally.range;
      if (stride > Number.MAX_SAFE_INTEGER) return null;
    }
  }
  return tallies;
}

/** Counts the combinations of a diagram that meet the constraints left out, by the loads they add up to. */
class DiagramCounter {
  /** By variable and tally: the greatest load of the variables at and below it. */
  private readonly subtree: Float64Array[];
  private work = 0;

  constructor(
    private readonly task: CountTask,
    private readonly tallies: readonly Tally[],
    private readonly meter: Ticker,
  ) {
    this.subtree = this.variablesBelow().map((list) =>
      Float64Array.from(tallies, ({ greatest }) => list.reduce((sum, x) => sum + (greatest[x] as number), 0)),
    );
  }

  /** @returns null where it takes too much work */
  count(): bigint | null {
    const { variable, firstEdge, firstBelow, below, roots } = this.task.known.diagram;
    const counts: Loads[] = [];
    const parts = (nodes: Int32Array): Part[] =>
      Array.from(nodes, (n) => ({
        loads: counts[n] as Loads,
        greatest: this.subtree[variable[n] as number] as Float64Array,
      }));
    for (let n = 0; n < variable.length; n++) {
      const x = variable[n] as number;
      const loads: Loads = new Map();
      for (let e = firstEdge[n] as number; e < (firstEdge[n + 1] as number); e++) {
        const own = {
          loads: this.ownLoads(x, e),
          greatest: Float64Array.from(this.tallies, ({ greatest }) => greatest[x] as number),
        };
        const sum = this.join([own, ...parts(below.subarray(firstBelow[e], firstBelow[e + 1]))]);
        for (const [key, times] of sum) loads.set(key, (loads.get(key) ?? 0n) + times);
        if (this.work > MOST_WORK) return null;
      }
      counts.push(loads);
    }
    let total = 0n;
    for (const times of this.join(parts(roots)).values()) total += times;
    return this.work > MOST_WORK ? null : total;
  }

  /**
   * Adds independent parts up. Tally by tally, the parts that it touches are put together, the cheapest first; what
   * is complete then, or cannot exceed its limit any more, need not be told apart, so the sums stay small.
   */
  private join(parts: readonly Part[]): Loads {
    let left = [...parts];
    for (;;) {
      const touched = this.tallies.map((_, t) => left.filter((part) => (part.greatest[t] as number) > 0));
      const sizes = touched.map((list) => (list.length < 2 ? Infinity : this.sizeOf(list)));
      const smallest = Math.min(...sizes);
      if (smallest === Infinity) break;
      const together = touched[sizes.indexOf(smallest)] as Part[];
      left = [
        ...left.filter((part) => !together.includes(part)),
        this.addAll(together, sizes.indexOf(smallest)),
      ];
    }
    return this.addAll(left).loads;
  }

  /** Logarithm of the number of loads that some parts can add up to. */
  private sizeOf(parts: readonly Part[]): number {
    return this.tallies.reduce((bits, { most }, t) => {
      const reached = parts.reduce((sum, part) => sum + (part.greatest[t] as number), 0);
      return bits + Math.log2(1 + Math.min(reached, Math.max(0, most)));
    }, 0);
  }

  /** @param completed a tally that no other part touches */
  private addAll(parts: readonly Part[], completed = -1): Part {
    const bySize = [...parts].sort((a, b) => a.loads.size - b.loads.size);
    let sum: Part = { loads: NOTHING, greatest: new Float64Array(this.tallies.length) };
    for (const [i, part] of bySize.entries()) {
      const greatest = sum.greatest.map((g, t) => g + (part.greatest[t] as number));
      const isLast = i === bySize.length - 1;
      const isComplete = isLast && greatest[completed] === (this.tallies[completed]?.range ?? 0) - 1;
      const loads = isComplete
        ? this.addCompleting(part.loads, sum.loads, this.tallies[completed] as Tally)
        : this.add(sum, part);
      sum = { loads: this.simplify(loads, greatest), greatest };
    }
    return sum;
  }

  private add(a: Part, b: Part): Loads {
    this.work += a.loads.size * b.loads.size;
    if (this.work > MOST_WORK) return NOTHING;
    this.meter.check();
    // The longest tally of both makes the longest polynomials.
    let axis: Tally | null = null;
    for (const [t, tally] of this.tallies.entries())
      if ((a.greatest[t] as number) > 0 && (b.greatest[t] as number) > 0 && tally.range > (axis?.range ?? 0))
        axis = tally;
    return addLoads(a.loads, b.loads, axis);
  }

  /** Adds up what stays within a tally that is then complete, and forgets its loads: no pairs of them are formed. */
  private addCompleting(a: Loads, b: Loads, { stride, range, most }: Tally): Loads {
    const upTo = new Map<number, { load: number; times: bigint }[]>();
    for (const [key, times] of b) {
      const load = Math.floor(key / stride) % range;
      const rest = key - load * stride;
      const list = upTo.get(rest);
      if (list) list.push({ load, times });
      else upTo.set(rest, [{ load, times }]);
    }
    for (const list of upTo.values()) {
      list.sort((p, q) => p.load - q.load);
      let times = 0n;
      for (const entry of list) entry.times = times += entry.times;
    }
    const sum: Loads = new Map();
    for (const [key, times] of a) {
      this.work += upTo.size;
      if (this.work > MOST_WORK) return NOTHING;
      const load = Math.floor(key / stride) % range;
      const rest = key - load * stride;
      for (const [other, list] of upTo) {
        let low = 0;
        let high = list.length;
        while (low < high) {
          const middle = (low + high) >>> 1;
          if ((list[middle] as { load: number }).load + load <= most) low = middle + 1;
          else high = middle;
        }
        if (low === 0) continue;
        const found = times * (list[low - 1] as { times: bigint }).times;
        sum.set(rest + other, (sum.get(rest + other) ?? 0n) + found);
      }
    }
    return sum;
  }

  /** Variables at and below each variable. */
  private variablesBelow(): number[][] {
    const { variable, firstEdge, firstBelow, below } = this.task.known.diagram;
    const lists: number[][] = Array.from(this.task.network.layout.size, () => []);
    for (let n = 0; n < variable.length; n++) {
      const x = variable[n] as number;
      if ((lists[x] as number[]).length > 0) continue;
      const e = firstEdge[n] as number;
      const children = below.subarray(firstBelow[e], firstBelow[e + 1]);
      lists[x] = [x, ...Array.from(children, (d) => lists[variable[d] as number] as number[]).flat()];
    }
    return lists;
  }

  /** Loads of the present groups of an edge. */
  private ownLoads(x: number, e: number): Loads {
    const { known, network, multiplicity } = this.task;
    const { groups, firstGroup } = known.diagram;
    const start = network.layout.domain[x] as number;
    const loads: Loads = new Map();
    for (let i = firstGroup[e] as number; i < (firstGroup[e + 1] as number); i++) {
      const g = groups[i] as number;
      if ((((network.state[start + (g >>> 5)] as number) >>> (g & 31)) & 1) === 0) continue;
      let key = 0;
      for (const { weights, stride } of this.tallies) key += (weights[x]?.[g] ?? 0) * stride;
      loads.set(key, (loads.get(key) ?? 0n) + BigInt(multiplicity[x]?.[g] as number));
    }
    return loads;
  }

  /** Drops what exceeds an inequality already, and forgets loads that cannot exceed it any more. */
  private simplify(loads: Loads, included: Float64Array): Loads {
    if (this.tallies.length === 0) return loads;
    const simple: Loads = new Map();
    for (const [key, times] of loads) {
      if (!this.isMet(key)) continue;
      let kept = key;
      for (const [t, { stride, range, most }] of this.tallies.entries()) {
        const load = Math.floor(key / stride) % range;
        if (load + range - 1 - (included[t] as number) <= most) kept -= load * stride;
      }
      simple.set(kept, (simple.get(kept) ?? 0n) + times);
    }
    return simple;
  }

  private isMet(key: number): boolean {
    return this.tallies.every(({ stride, range, most }) => Math.floor(key / stride) % range <= most);
  }
}

export interface CountTask {
  readonly network: Network;
  readonly known: SolverDiagram;
  /** Values that each group of each variable stands for. */
  readonly multiplicity: readonly (readonly number[])[];
}

/**
 * Number of combinations of values, within the network's state, that meet the constraints of a diagram and those it leaves out;
 * null where a constraint left out cannot be counted with, or too many loads would have to be told apart.
 */
export function countByDiagram(task: CountTask, meter: Ticker): bigint | null {
  const tallies = talliesOf(task.network, task.known);
  return tallies && new DiagramCounter(task, tallies, meter).count();
}
