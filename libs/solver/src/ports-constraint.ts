import { lowestBit } from './bits.js';
import type { ClassOrder } from './class-order.js';
import type { Constraint, Effort, Inequality } from './constraint.js';
import { type Behind, certainPorts, type HostPorts, leastPorts, mostPorts, openPorts } from './host-ports.js';
import { isSatisfied } from './is-satisfied.js';
import { neededPositions } from './needed-positions.js';
import type { Network } from './network.js';
import { addTo, type Counts, isWithin } from './port-sets.js';
import { orderOfHosts, orderOfPlaces } from './ports-order.js';
import type { PortsSpec } from './problem.js';

/** More than any host has; small enough to add up. */
const MANY = 1 << 20;

export interface BoundPorts {
  /** Views of the users and obstacles, in the order of `needs`, then of the host if its ports differ. */
  readonly views: Int32Array;
  /** What each class of a user needs, less what it gives, by set of ports; nothing for a mere obstacle. */
  readonly needs: readonly (readonly Counts[])[];
  /** Needs of users that always need the same. */
  readonly fixedNeeds: Counts;
  /** Ports of each class of the host; a host that makes no difference has one class and no view. */
  readonly hosts: readonly HostPorts[];
  /** Position of each obstacle; −1: all its classes leave the same. */
  readonly obstaclesAt: readonly number[];
  readonly sizes: readonly number[];
}

/** Calls `visit` with each present class of a view until it says true. @returns whether it did */
const someClass = (network: Network, id: number, visit: (c: number) => boolean): boolean => {
  const { offset, words } = network.view(id);
  for (let w = 0; w < words; w++)
    for (let word = network.state[offset + w] as number; word !== 0; word &= word - 1)
      if (visit((w << 5) + lowestBit(word))) return true;
  return false;
};

/**
 * Everything finds a port of its own exactly when no set of ports is smaller than the needs that only its ports meet
 * (Hall). Where parts stand behind the ports, propagation gives every port the best of what each of them may leave.
 */
export class PortsConstraint implements Constraint {
  readonly id: string;
  readonly effort: Effort = 1;
  private readonly hostView: number;
  private readonly least: readonly Counts[];
  private readonly total: Counts;
  private readonly trial: Counts;
  private readonly scratch: Counts;
  /** By class of the host: its ports whatever stands behind them. */
  private readonly certain: readonly Counts[];
  /** By class of the host: its ports as the present obstacles leave them at best. */
  private readonly ports: Counts[];
  private readonly ownPorts: readonly Counts[];
  private readonly supported: readonly Uint32Array[];
  private readonly anyClass: Int32Array;
  private readonly fixedClass: Int32Array;
  private readonly orders = new Map<number, ClassOrder>();
  private asked: readonly Inequality[] | null = null;

  constructor(
    readonly spec: PortsSpec,
    private readonly bound: BoundPorts,
  ) {
    const { needs, hosts, views, fixedNeeds, obstaclesAt } = bound;
    this.id = spec.id;
    this.hostView = views.length > needs.length ? (views[needs.length] as number) : -1;
    this.least = needs.map(() => new Int32Array(fixedNeeds.length));
    this.total = new Int32Array(fixedNeeds.length);
    this.trial = new Int32Array(fixedNeeds.length);
    this.scratch = new Int32Array(fixedNeeds.length);
    this.certain = hosts.map(certainPorts);
    this.ownPorts = hosts.map(() => new Int32Array(fixedNeeds.length));
    this.ports = [...this.ownPorts];
    this.supported = [...needs.map((rows) => rows.length), hosts.length].map(
      (count) => new Uint32Array((count + 31) >>> 5),
    );
    this.anyClass = new Int32Array(obstaclesAt.length).fill(-1);
    this.fixedClass = new Int32Array(obstaclesAt.length).fill(-1);
  }

  get views(): Int32Array {
    return this.bound.views;
  }

  /** With every port as nothing behind it leaves it: they hold wherever the constraint is met. */
  get inequalities(): readonly Inequality[] {
    return this.spec.unmet ? [] : (this.asked ??= this.workOutInequalities());
  }

  get wholeInequalities(): readonly Inequality[] | null {
    return this.spec.unmet === true || this.isContested ? null : this.inequalities;
  }

  orderOf(position: number): ClassOrder | null {
    if (this.spec.unmet) return null;
    let order = this.orders.get(position);
    if (!order) {
      const rows = this.bound.needs[position];
      order = rows
        ? orderOfPlaces(rows, this.bound.hosts, this.bound.obstaclesAt.indexOf(position))
        : orderOfHosts(this.bound.hosts);
      this.orders.set(position, order);
    }
    return order;
  }

  propagate(network: Network): boolean {
    if (this.spec.unmet) return this.mayLack(network);
    if (this.canNotLack(network)) {
      network.settle();
      return true;
    }
    let changed = true;
    while (changed) {
      if (this.isRefuted(network)) return false;
      changed = this.keepHosts(network);
      for (let u = 0; u < this.bound.needs.length; u++) if (this.keepUser(network, u)) changed = true;
      for (let o = 0; o < this.bound.obstaclesAt.length; o++)
        if (this.keepObstacle(network, o)) changed = true;
    }
    return true;
  }

  explain(network: Network): number[] {
    return neededPositions(network, this.views, () =>
      this.spec.unmet ? !this.mayLack(network) : this.isRefuted(network),
    );
  }

  allows(classes: Int32Array): boolean {
    const { needs, hosts, fixedNeeds, obstaclesAt } = this.bound;
    this.total.set(fixedNeeds);
    for (const [u, rows] of needs.entries()) addTo(this.total, rows[classes[u] as number] as Counts, 1);
    const host = hosts[this.hostView < 0 ? 0 : (classes[needs.length] as number)] as HostPorts;
    for (const [o, at] of obstaclesAt.entries()) this.fixedClass[o] = at < 0 ? -1 : (classes[at] as number);
    const behind = { state: noState, offsets: this.anyClass, fixed: this.fixedClass };
    const fits = isWithin(this.total, mostPorts(host, behind, this.trial));
    this.fixedClass.fill(-1);
    return fits !== (this.spec.unmet ?? false);
  }

  /**
   * Where one class of each position needs least and leaves most of all that are present, they serve whatever the others
   * are.
   */
  isExact(network: Network): boolean {
    if (this.spec.unmet) return false;
    return this.bound.needs.every((rows, u) => {
      const least = this.leastOf(network, u);
      const order = this.bound.obstaclesAt.includes(u) ? this.orderOf(u) : null;
      return someClass(
        network,
        this.views[u] as number,
        (c) =>
          isWithin(rows[c] as Counts, least) &&
          (order === null ||
            !someClass(network, this.views[u] as number, (d) => order[d * rows.length + c] !== 1)),
      );
    });
  }

  isSatisfied(solution: Int32Array): boolean {
    return isSatisfied(this.spec, this.bound.sizes, solution);
  }

  private get isContested(): boolean {
    return this.bound.hosts.some(({ contested }) => contested.length > 0);
  }

  private workOutInequalities(): readonly Inequality[] {
    const { needs, hosts, fixedNeeds } = this.bound;
    const ports = hosts.map(openPorts);
    return Array.from(fixedNeeds, (fixed, k) => {
      const column = (rows: readonly Counts[], sign: number): Float64Array =>
        Float64Array.from(rows, (row) => sign * (row[k] as number));
      const weights = needs.map((rows) => column(rows, 1));
      if (this.hostView >= 0) weights.push(column(ports, -1));
      return { weights, most: (this.hostView >= 0 ? 0 : (ports[0]?.[k] as number)) - fixed };
    });
  }

  private behind(network: Network, fixed: Int32Array = this.anyClass): Behind {
    const offsets = Int32Array.from(this.bound.obstaclesAt, (at) =>
      at < 0 ? 0 : network.view(this.views[at] as number).offset,
    );
    return { state: network.state, offsets, fixed };
  }

  private someHost(network: Network, visit: (host: number) => boolean): boolean {
    return this.hostView < 0 ? visit(0) : someClass(network, this.hostView, visit);
  }

  private fitsSomeHost(network: Network, needed: Counts): boolean {
    return this.someHost(network, (host) => isWithin(needed, this.ports[host] as Counts));
  }

  /** The least needs of a user, set by set. */
  private leastOf(network: Network, u: number): Counts {
    const rows = this.bound.needs[u] as readonly Counts[];
    const least = (this.least[u] as Counts).fill(MANY);
    someClass(network, this.views[u] as number, (c) => {
      const row = rows[c] as Counts;
      for (let k = 0; k < least.length; k++)
        if ((row[k] as number) < (least[k] as number)) least[k] = row[k] as number;
      return false;
    });
    return least;
  }

  /** Adds up the least needs of each user; refuted where no present host has the ports. */
  private isRefuted(network: Network): boolean {
    this.total.set(this.bound.fixedNeeds);
    for (let u = 0; u < this.bound.needs.length; u++) addTo(this.total, this.leastOf(network, u), 1);
    const behind = this.behind(network);
    this.someHost(network, (host) => {
      const own = this.ownPorts[host] as Counts;
      this.ports[host] = mostPorts(this.bound.hosts[host] as HostPorts, behind, own);
      return false;
    });
    return !this.fitsSomeHost(network, this.total);
  }

  /** Keeps the present classes of a view that a test lets pass. */
  private keepWhere(network: Network, position: number, isSupported: (c: number) => boolean): boolean {
    const id = this.views[position] as number;
    const supported = (this.supported[position] as Uint32Array).fill(0);
    someClass(network, id, (c) => {
      if (isSupported(c)) supported[c >>> 5] = (supported[c >>> 5] as number) | (1 << (c & 31));
      return false;
    });
    return network.keep(id, supported);
  }

  private keepHosts(network: Network): boolean {
    if (this.hostView < 0) return false;
    return this.keepWhere(network, this.bound.needs.length, (host) =>
      isWithin(this.total, this.ports[host] as Counts),
    );
  }

  private keepUser(network: Network, u: number): boolean {
    const rows = this.bound.needs[u] as readonly Counts[];
    return this.keepWhere(network, u, (c) => {
      this.trial.set(this.total);
      addTo(this.trial, this.least[u] as Counts, -1);
      addTo(this.trial, rows[c] as Counts, 1);
      return this.fitsSomeHost(network, this.trial);
    });
  }

  /** Keeps what stands behind the ports where, with the best of everything else, some host still has the ports. */
  private keepObstacle(network: Network, o: number): boolean {
    const at = this.bound.obstaclesAt[o] as number;
    const { hosts } = this.bound;
    if (at < 0) return false;
    const rows = this.bound.needs[at] as readonly Counts[];
    const isUser = rows.some((row) => row.some((n) => n !== 0));
    const isHindered = (host: number): boolean =>
      hosts[host]?.contested.some(({ levels }) => levels[o] != null) ?? false;
    const isFree = (host: number): boolean =>
      !isHindered(host) && isWithin(this.total, this.ports[host] as Counts);
    if (!isUser && this.someHost(network, isFree)) return false;
    const needed = Int32Array.from(this.total);
    addTo(needed, this.least[at] as Counts, -1);
    const behind = this.behind(network, this.fixedClass);
    const changed = this.keepWhere(network, at, (c) => {
      this.fixedClass[o] = c;
      this.trial.set(needed);
      addTo(this.trial, rows[c] as Counts, 1);
      return (
        this.someHost(network, (host) => isWithin(this.trial, this.certain[host] as Counts)) ||
        this.someHost(network, (host) =>
          isWithin(this.trial, mostPorts(hosts[host] as HostPorts, behind, this.scratch)),
        )
      );
    });
    this.fixedClass[o] = -1;
    return changed;
  }

  /** Whether every host that is present has the ports for the most needs, whatever stands behind them. */
  private canNotLack(network: Network): boolean {
    return !this.mayLack(network);
  }

  /** Whether some set of ports may be too small: with the most needs and the fewest ports that are present. */
  private mayLack(network: Network): boolean {
    const most = Int32Array.from(this.bound.fixedNeeds);
    for (const [u, rows] of this.bound.needs.entries()) {
      const own = new Int32Array(most.length).fill(-MANY);
      someClass(network, this.views[u] as number, (c) => {
        for (let k = 0; k < own.length; k++)
          own[k] = Math.max(own[k] as number, (rows[c] as Counts)[k] as number);
        return false;
      });
      addTo(most, own, 1);
    }
    const behind = this.behind(network);
    return this.someHost(
      network,
      (host) => !isWithin(most, leastPorts(this.bound.hosts[host] as HostPorts, behind, this.trial)),
    );
  }
}

const noState = new Uint32Array();
