import { lowestBit } from './bits.js';
import type { Constraint } from './constraint.js';
import type { Network } from './network.js';

/** Costs of the classes of each position of a constraint. */
type ClassCosts = readonly Float64Array[];

interface Member {
  readonly constraint: Constraint;
  readonly index: number;
  /** What the constraint has taken from the variables, by position and class. */
  readonly taken: ClassCosts;
}

/**
 * Lower bounds on cost by shifting it between variables. A constraint takes the least costs of the classes it sees, works out
 * for each class the cheapest combination that contains it, and gives that back in equal parts. The sum of all that is held
 * stays the cost of every solution; what the constraints keep is never negative; so the least shifted costs of the
 * variables bound the whole, in this state and in every narrower one.
 */
export class CostShift {
  private constructor(
    private readonly network: Network,
    /** Shifted cost of each group, by variable; empty for variables outside. */
    readonly cost: readonly Float64Array[],
    private readonly members: readonly Member[],
  ) {}

  /** The given costs of some variables, shifted by the unsettled constraints that see two of them or more. */
  static start(network: Network, variables: Int32Array, cost: readonly Float64Array[]): CostShift {
    const own = cost.map(() => new Float64Array(0));
    for (const x of variables) own[x] = Float64Array.from(cost[x] as Float64Array);
    const members: Member[] = [];
    for (const [index, constraint] of network.constraints.entries()) {
      if (network.isSettled(index) || !constraint.cheapestOf) continue;
      let seen = 0;
      for (const id of constraint.views)
        if ((own[network.view(id).variable] as Float64Array).length > 0) seen++;
      if (seen < 2) continue;
      const taken = Array.from(constraint.views, (id) => new Float64Array(network.view(id).count));
      members.push({ constraint, index, taken });
    }
    return new CostShift(network, own, members);
  }

  copy(): CostShift {
    const cost = this.cost.map((c) => (c.length === 0 ? c : Float64Array.from(c)));
    const members = this.members
      .filter((m) => !this.network.isSettled(m.index))
      .map((m) => ({ ...m, taken: m.taken.map((t) => Float64Array.from(t)) }));
    return new CostShift(this.network, cost, members);
  }

  /** Goes through the constraints once, forwards or backwards. */
  sweep(forwards: boolean): void {
    const { members } = this;
    for (let i = 0; i < members.length; i++)
      this.shift(members[forwards ? i : members.length - 1 - i] as Member);
  }

  private shift({ constraint, index, taken }: Member): void {
    const { network } = this;
    if (network.isSettled(index)) return;
    let open = 0;
    for (const [p, id] of constraint.views.entries()) if (this.take(id, taken[p] as Float64Array)) open++;
    if (open === 0) return;
    const cheapest = constraint.cheapestOf?.(network, taken) ?? [];
    for (const [p, id] of constraint.views.entries())
      this.give(id, { taken: taken[p] as Float64Array, cheapest: cheapest[p] as Float64Array, parts: open });
  }

  /** Takes the least cost of each present class from its groups. @returns whether the variable takes part */
  private take(id: number, taken: Float64Array): boolean {
    const { network } = this;
    const view = network.view(id);
    const cost = this.cost[view.variable] as Float64Array;
    if (cost.length === 0) return false;
    const least = new Float64Array(view.count).fill(Infinity);
    this.forEachGroup(view.variable, (g) => {
      const c = view.classOf[g] as number;
      if ((cost[g] as number) < (least[c] as number)) least[c] = cost[g] as number;
    });
    for (let c = 0; c < view.count; c++)
      if (least[c] !== Infinity) taken[c] = (taken[c] as number) + (least[c] as number);
    this.forEachGroup(view.variable, (g) => {
      cost[g] = (cost[g] as number) - (least[view.classOf[g] as number] as number);
    });
    return true;
  }

  private give(id: number, share: { taken: Float64Array; cheapest: Float64Array; parts: number }): void {
    const view = this.network.view(id);
    const cost = this.cost[view.variable] as Float64Array;
    if (cost.length === 0) return;
    const { taken, cheapest, parts } = share;
    for (let c = 0; c < view.count; c++)
      if (cheapest[c] !== Infinity) taken[c] = (taken[c] as number) - (cheapest[c] as number) / parts;
    this.forEachGroup(view.variable, (g) => {
      const least = cheapest[view.classOf[g] as number] as number;
      if (least !== Infinity) cost[g] = (cost[g] as number) + least / parts;
    });
  }

  private forEachGroup(variable: number, visit: (group: number) => void): void {
    const { layout, state } = this.network;
    const start = layout.domain[variable] as number;
    const end = layout.domain[variable + 1] as number;
    for (let w = start; w < end; w++)
      for (let word = state[w] as number; word !== 0; word &= word - 1)
        visit(((w - start) << 5) + lowestBit(word));
  }
}
