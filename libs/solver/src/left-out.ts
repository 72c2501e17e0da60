import type { Constraint } from './constraint.js';
import type { Network } from './network.js';

/** Weights of the groups of some variables that add up to `most` or less in every solution. */
export interface GroupInequality {
  /** Number of the constraint it comes from. */
  readonly constraint: number;
  readonly variables: Int32Array;
  readonly weights: readonly Float64Array[];
  readonly most: number;
}

/** The constraints that a diagram leaves out. */
export class LeftOut {
  readonly inequalities: readonly GroupInequality[];
  private readonly classes: readonly Int32Array[];

  constructor(
    private readonly network: Network,
    /** Numbers of the constraints. */
    readonly indexes: readonly number[],
  ) {
    this.classes = indexes.map((index) => new Int32Array(this.at(index).views.length));
    this.inequalities = indexes.flatMap((index) => {
      const views = Array.from(this.at(index).views, (id) => network.view(id));
      return (this.at(index).inequalities ?? []).map(({ weights, most }) => ({
        constraint: index,
        variables: Int32Array.from(views, (v) => v.variable),
        weights: views.map((v, p) => Float64Array.from(v.classOf, (c) => weights[p]?.[c] as number)),
        most,
      }));
    });
  }

  /** Whether the network's state meets them all, whatever is chosen in it. */
  areSettled(): boolean {
    return this.indexes.every((index) => this.network.isSettled(index));
  }

  /** Those that an assignment within the network's state does not meet. */
  unmet(groups: Int32Array): number[] {
    const { network } = this;
    const unmet: number[] = [];
    for (let i = 0; i < this.indexes.length; i++) {
      const index = this.indexes[i] as number;
      if (network.isSettled(index)) continue;
      const constraint = this.at(index);
      const classes = this.classes[i] as Int32Array;
      for (let p = 0; p < classes.length; p++) {
        const { variable, classOf } = network.view(constraint.views[p] as number);
        classes[p] = classOf[groups[variable] as number] as number;
      }
      if (!constraint.allows(classes)) unmet.push(index);
    }
    return unmet;
  }

  private at(index: number): Constraint {
    return this.network.constraints[index] as Constraint;
  }
}
