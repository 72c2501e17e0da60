import { lowestBit } from './bits.js';
import type { Constraint, Effort, Inequality } from './constraint.js';
import { isSatisfied, marginBetween } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import type { MarginKind, SumSpec } from './problem.js';
import { roundTo12Digits } from './rounding.js';

/** One variable of a sum: for each of its classes what it adds to the load, and the limit if it sets the limit. */
export interface SumPlace {
  readonly loads: Float64Array;
  readonly limits: Float64Array | null;
}

/** One addend in the order of the declaration: a class weight of a position, or (position −1) a constant. */
export interface Addend {
  readonly position: number;
  readonly weights: Float64Array;
}

export interface BoundSum {
  readonly views: Int32Array;
  readonly places: readonly SumPlace[];
  readonly addends: readonly Addend[];
  /** Limit where no position sets it. */
  readonly constant: number;
  readonly fixedLoad: number;
  /** Margin to keep beyond the limit itself. */
  readonly margin: { readonly kind: MarginKind; readonly atLeast: number } | null;
  /** The load stays below the limit, not at it. */
  readonly strict: boolean;
  readonly sizes: readonly number[];
}

/** Most decimal places, and largest whole number, for which decimals are compared as whole numbers. */
const MOST_PLACES = 6;
const LARGEST_WHOLE = 1e10;
/** How far a whole number may be off by the arithmetic that made it: less than 12 digits can tell. */
const NEAR_WHOLE = 1e-13;

/** The power of ten that makes whole numbers of all; null where there is none small enough. */
function decimalScale(numbers: readonly number[]): number | null {
  for (let places = 0, scale = 1; places <= MOST_PLACES; places++, scale *= 10) {
    if (numbers.some((x) => Math.abs(x * scale) > LARGEST_WHOLE)) return null;
    if (
      numbers.every(
        (x) => Math.abs(x * scale - Math.round(x * scale)) <= NEAR_WHOLE * Math.max(1, Math.abs(x * scale)),
      )
    )
      return scale;
  }
  return null;
}

/**
 * Bounds on the load. Adding in another order may differ in the last digits, so a class is removed only where it misses by more than
 * rounding can make up, and once all is fixed the declared order decides.
 */
export class SumConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort;
  private readonly least: Float64Array;
  private readonly greatest: Float64Array;
  private readonly supported: Uint32Array[];
  /** One class of each position. */
  private readonly classes: Int32Array;
  /** By how much rounding may move a load against its limit, with room to spare. */
  private readonly slack: number;
  private whole: { inequalities: readonly Inequality[] | null; unit: number } | null = null;
  /** Sum of the least loads, and the limit of the class that leaves most room. */
  private total = 0;
  private room = 0;

  constructor(
    readonly spec: SumSpec,
    private readonly bound: BoundSum,
  ) {
    this.id = spec.id;
    this.effort = bound.views.length <= 6 ? 0 : 1;
    this.least = new Float64Array(bound.views.length);
    this.greatest = new Float64Array(bound.views.length);
    this.supported = bound.places.map((p) => new Uint32Array((p.loads.length + 31) >>> 5));
    this.classes = new Int32Array(bound.views.length);
    let largest = Math.abs(bound.fixedLoad);
    for (const { loads } of bound.places) largest += loads.reduce((a, b) => Math.max(a, Math.abs(b)), 0);
    let farthest = Number.isFinite(bound.constant) ? Math.abs(bound.constant) : 0;
    for (const { limits } of bound.places)
      for (const limit of limits ?? [])
        if (Number.isFinite(limit)) farthest = Math.max(farthest, Math.abs(limit));
    this.slack = 4e-11 * (largest + farthest);
  }

  /** Limits beyond the greatest load ask no more than the greatest load itself. */
  get inequalities(): readonly Inequality[] {
    const { places, fixedLoad, constant } = this.bound;
    const greatest = this.slack + places.reduce((sum, { loads }) => sum + Math.max(...loads), fixedLoad);
    const least = places.reduce((sum, { loads }) => sum + Math.min(...loads), fixedLoad) - this.slack - 1;
    const limit = (value: number): number => Math.max(least, Math.min(greatest, this.within(value)));
    const weights = places.map(({ loads, limits }) =>
      limits ? loads.map((load, c) => load - limit(limits[c] as number)) : loads,
    );
    const isConstant = places.every((p) => p.limits === null);
    return [{ weights, most: (isConstant ? limit(constant) : 0) - fixedLoad + this.slack }];
  }

  /**
   * Where all loads and limits are decimals with few places, they are compared as whole numbers: with at most 12 digits, that is
   * what rounding to 12 digits compares.
   */
  get wholeInequalities(): readonly Inequality[] | null {
    return this.inWhole().inequalities;
  }

  /** In whole numbers bounds are exact, as long as rounding stays below their unit. */
  isExact(): boolean {
    const { inequalities, unit } = this.inWhole();
    return inequalities !== null && this.slack < unit / 2;
  }

  private inWhole(): { inequalities: readonly Inequality[] | null; unit: number } {
    return (this.whole ??= this.workOutWhole());
  }

  private workOutWhole(): { inequalities: readonly Inequality[] | null; unit: number } {
    const { places, fixedLoad, constant, margin, strict } = this.bound;
    if (margin || strict) return { inequalities: null, unit: 0 };
    const limits = places.flatMap((p) => (p.limits ? [...p.limits] : []));
    const numbers = [fixedLoad, constant, ...places.flatMap((p) => [...p.loads]), ...limits].filter(
      Number.isFinite,
    );
    const scale = decimalScale(numbers);
    if (scale === null) return { inequalities: null, unit: 0 };
    const whole = (x: number): number => Math.round(x * scale);
    const greatest = places.reduce((sum, { loads }) => sum + whole(Math.max(...loads)), whole(fixedLoad));
    const least = places.reduce((sum, { loads }) => sum + whole(Math.min(...loads)), whole(fixedLoad));
    const limit = (x: number): number => (Number.isFinite(x) ? whole(x) : x > 0 ? greatest : least - 1);
    const weights = places.map((p) =>
      p.loads.map((load, c) => whole(load) - (p.limits ? limit(p.limits[c] as number) : 0)),
    );
    const setter = places.findIndex((p) => p.limits !== null);
    const most = (setter < 0 ? limit(constant) : 0) - whole(fixedLoad);
    const inequalities = [{ weights, most, ...(setter < 0 ? {} : { limit: setter }) }];
    return { inequalities, unit: 1 / scale };
  }

  get views(): Int32Array {
    return this.bound.views;
  }

  propagate(network: Network): boolean {
    let changed = true;
    while (changed) {
      if (this.isRefuted(network)) return false;
      if (this.isSettled(network)) {
        network.settle();
        return true;
      }
      changed = false;
      for (let p = 0; p < this.views.length; p++) if (this.keepPosition(network, p)) changed = true;
    }
    return true;
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () => this.isRefuted(network));
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  /** Exact, in the declared order. */
  allows(classes: Int32Array): boolean {
    let load = 0;
    for (const { position, weights } of this.bound.addends)
      load += weights[position < 0 ? 0 : (classes[position] as number)] as number;
    let limit = this.bound.constant;
    for (const [p, { limits }] of this.bound.places.entries())
      if (limits) limit = limits[classes[p] as number] as number;
    const [demand, most] = [roundTo12Digits(load), roundTo12Digits(limit)];
    if (this.bound.strict ? demand >= most : demand > most) return false;
    const { margin } = this.bound;
    return !margin || marginBetween(load, limit, margin.kind) >= margin.atLeast;
  }

  /** The limit less the margin to keep, for bounds. */
  private within(limit: number): number {
    const { margin } = this.bound;
    if (!margin || margin.atLeast <= 0 || limit === -Infinity) return limit;
    if (margin.kind === 'difference') return limit === Infinity ? limit : limit - margin.atLeast;
    // Against 0 or an unlimited limit the largest ratio is 1 (see marginBetween).
    if (limit === 0 || limit === Infinity) return margin.atLeast > 1 ? -Infinity : limit;
    return limit - margin.atLeast * Math.abs(limit);
  }

  /** Computes the bounds; refuted where even the least load exceeds the widest limit, or all is fixed and not met. */
  private isRefuted(network: Network): boolean {
    const { state } = network;
    this.total = this.bound.fixedLoad;
    this.room = this.within(this.bound.constant);
    let fixed = true;
    const { classes } = this;
    for (let p = 0; p < this.views.length; p++) {
      const { offset, words } = network.view(this.views[p] as number);
      const { loads, limits } = this.bound.places[p] as SumPlace;
      let least = Infinity;
      let greatest = -Infinity;
      let room = -Infinity;
      let present = 0;
      for (let w = 0; w < words; w++)
        for (let word = state[offset + w] as number; word !== 0; word &= word - 1) {
          const c = (w << 5) + lowestBit(word);
          const load = loads[c] as number;
          present++;
          classes[p] = c;
          if (load < least) least = load;
          if (load > greatest) greatest = load;
          if (limits) room = Math.max(room, this.within(limits[c] as number) - load);
        }
      if (present === 0) return true;
      if (present > 1) fixed = false;
      this.least[p] = limits ? 0 : least;
      this.greatest[p] = limits ? 0 : greatest;
      if (limits) this.room = room;
      else this.total += least;
    }
    if (fixed) return !this.allows(classes);
    return this.total > this.room + this.slack;
  }

  /** Whether even the greatest load stays clearly below the tightest limit. */
  private isSettled(network: Network): boolean {
    const { state } = network;
    let total = this.bound.fixedLoad;
    let room = this.within(this.bound.constant);
    for (let p = 0; p < this.views.length; p++) {
      total += this.greatest[p] as number;
      const { loads, limits } = this.bound.places[p] as SumPlace;
      if (!limits) continue;
      const { offset, words } = network.view(this.views[p] as number);
      room = Infinity;
      for (let w = 0; w < words; w++)
        for (let word = state[offset + w] as number; word !== 0; word &= word - 1) {
          const c = (w << 5) + lowestBit(word);
          room = Math.min(room, this.within(limits[c] as number) - (loads[c] as number));
        }
    }
    return total < room - this.slack;
  }

  private keepPosition(network: Network, p: number): boolean {
    const { state } = network;
    const id = this.views[p] as number;
    const { offset, words } = network.view(id);
    const { loads, limits } = this.bound.places[p] as SumPlace;
    const others = this.total - (this.least[p] as number);
    const supported = (this.supported[p] as Uint32Array).fill(0);
    for (let w = 0; w < words; w++)
      for (let word = state[offset + w] as number; word !== 0; word &= word - 1) {
        const c = (w << 5) + lowestBit(word);
        const room = limits ? this.within(limits[c] as number) : this.room;
        if (others + (loads[c] as number) <= room + this.slack)
          supported[w] = (supported[w] as number) | (1 << (c & 31));
      }
    return network.keep(id, supported);
  }
}
