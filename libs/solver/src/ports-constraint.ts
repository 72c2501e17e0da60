import { lowestBit } from './bits.js';
import type { Constraint, Effort, Inequality } from './constraint.js';
import { isSatisfied } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import type { PortsSpec } from './problem.js';

/** More than any host has; small enough to add up. */
const MANY = 1 << 20;

/** Counts for each threshold size, one row a class. */
export interface CountTable {
  readonly rows: readonly Int32Array[];
}

export interface BoundPorts {
  /** Views of the users, in the order of `needs`, then of the host if its ports differ. */
  readonly views: Int32Array;
  readonly needs: readonly CountTable[];
  /** Needs of users that always need the same. */
  readonly fixedNeeds: Int32Array;
  /** Ports of each class of the host; a host that makes no difference has one class and no view. */
  readonly ports: CountTable;
  readonly sizes: readonly number[];
}

/**
 * Every size finds a port exactly when, for each size, as many ports of that size or more exist as are needed at that
 * size or more: since a port takes every smaller size, Hall's condition has to be checked at these thresholds alone.
 */
export class PortsConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort = 1;
  private readonly hostView: number;
  private readonly thresholds: number;
  private readonly least: Int32Array[];
  private readonly total: Int32Array;
  private readonly trial: Int32Array;
  private readonly supported: Uint32Array[];
  private asked: readonly Inequality[] | null = null;

  constructor(
    readonly spec: PortsSpec,
    private readonly bound: BoundPorts,
  ) {
    this.id = spec.id;
    this.hostView =
      bound.views.length > bound.needs.length ? (bound.views[bound.needs.length] as number) : -1;
    this.thresholds = bound.fixedNeeds.length;
    this.least = bound.needs.map(() => new Int32Array(this.thresholds));
    this.total = new Int32Array(this.thresholds);
    this.trial = new Int32Array(this.thresholds);
    this.supported = [...bound.needs, bound.ports].map((t) => new Uint32Array((t.rows.length + 31) >>> 5));
  }

  get inequalities(): readonly Inequality[] {
    return (this.asked ??= this.workOutInequalities());
  }

  private workOutInequalities(): readonly Inequality[] {
    const { needs, ports, fixedNeeds } = this.bound;
    return Array.from(fixedNeeds, (fixed, k) => {
      const column = (rows: readonly Int32Array[], sign: number): Float64Array =>
        Float64Array.from(rows, (row) => sign * (row[k] as number));
      const weights = needs.map((table) => column(table.rows, 1));
      if (this.hostView >= 0) weights.push(column(ports.rows, -1));
      return { weights, most: (this.hostView >= 0 ? 0 : (ports.rows[0]?.[k] as number)) - fixed };
    });
  }

  get wholeInequalities(): readonly Inequality[] {
    return this.inequalities;
  }

  get views(): Int32Array {
    return this.bound.views;
  }

  propagate(network: Network): boolean {
    let changed = true;
    while (changed) {
      if (this.isRefuted(network)) return false;
      changed = this.keepHosts(network);
      for (let u = 0; u < this.bound.needs.length; u++) if (this.keepUser(network, u)) changed = true;
    }
    return true;
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () => this.isRefuted(network));
  }

  allows(classes: Int32Array): boolean {
    const { needs, ports, fixedNeeds } = this.bound;
    this.total.set(fixedNeeds);
    for (const [u, { rows }] of needs.entries())
      this.add(this.total, rows[classes[u] as number] as Int32Array, 1);
    return this.fits(
      this.total,
      ports.rows[this.hostView < 0 ? 0 : (classes[needs.length] as number)] as Int32Array,
    );
  }

  /** Where the least needs of each user are those of one class, all users can have their least at once. */
  isExact(network: Network): boolean {
    for (const [u, { rows }] of this.bound.needs.entries()) {
      const least = this.leastOf(network, u);
      const { offset, words } = network.view(this.views[u] as number);
      let isAttained = false;
      for (let w = 0; w < words && !isAttained; w++)
        for (let word = network.state[offset + w] as number; word !== 0 && !isAttained; word &= word - 1)
          isAttained = this.fits(rows[(w << 5) + lowestBit(word)] as Int32Array, least);
      if (!isAttained) return false;
    }
    return true;
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  private add(to: Int32Array, row: Int32Array, sign: number): void {
    for (let k = 0; k < this.thresholds; k++) to[k] = (to[k] as number) + sign * (row[k] as number);
  }

  private fits(needed: Int32Array, ports: Int32Array): boolean {
    for (let k = 0; k < this.thresholds; k++) if ((needed[k] as number) > (ports[k] as number)) return false;
    return true;
  }

  private fitsSomeHost(network: Network, needed: Int32Array): boolean {
    const { rows } = this.bound.ports;
    if (this.hostView < 0) return this.fits(needed, rows[0] as Int32Array);
    const { offset, words } = network.view(this.hostView);
    for (let w = 0; w < words; w++)
      for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1)
        if (this.fits(needed, rows[(w << 5) + lowestBit(word)] as Int32Array)) return true;
    return false;
  }

  /** The least needs of a user, threshold by threshold. */
  private leastOf(network: Network, u: number): Int32Array {
    const { rows } = this.bound.needs[u] as CountTable;
    const { offset, words } = network.view(this.views[u] as number);
    const least = (this.least[u] as Int32Array).fill(MANY);
    for (let w = 0; w < words; w++)
      for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1) {
        const row = rows[(w << 5) + lowestBit(word)] as Int32Array;
        for (let k = 0; k < this.thresholds; k++)
          if ((row[k] as number) < (least[k] as number)) least[k] = row[k] as number;
      }
    return least;
  }

  /** Adds up the least needs of each user, threshold by threshold; refuted where no present host has the ports. */
  private isRefuted(network: Network): boolean {
    this.total.set(this.bound.fixedNeeds);
    for (let u = 0; u < this.bound.needs.length; u++) this.add(this.total, this.leastOf(network, u), 1);
    return !this.fitsSomeHost(network, this.total);
  }

  private keepHosts(network: Network): boolean {
    if (this.hostView < 0) return false;
    const { offset, words } = network.view(this.hostView);
    const { rows } = this.bound.ports;
    const supported = (this.supported[this.bound.needs.length] as Uint32Array).fill(0);
    for (let w = 0; w < words; w++)
      for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1) {
        const c = (w << 5) + lowestBit(word);
        if (this.fits(this.total, rows[c] as Int32Array))
          supported[w] = (supported[w] as number) | (1 << (c & 31));
      }
    return network.keep(this.hostView, supported);
  }

  private keepUser(network: Network, u: number): boolean {
    const id = this.views[u] as number;
    const { offset, words } = network.view(id);
    const { rows } = this.bound.needs[u] as CountTable;
    const supported = (this.supported[u] as Uint32Array).fill(0);
    for (let w = 0; w < words; w++)
      for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1) {
        const c = (w << 5) + lowestBit(word);
        this.trial.set(this.total);
        this.add(this.trial, this.least[u] as Int32Array, -1);
        this.add(this.trial, rows[c] as Int32Array, 1);
        if (this.fitsSomeHost(network, this.trial)) supported[w] = (supported[w] as number) | (1 << (c & 31));
      }
    return network.keep(id, supported);
  }
}
