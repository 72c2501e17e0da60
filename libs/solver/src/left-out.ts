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

/** How much the groups of some variables ask of a constraint. */
export interface Strain {
  readonly constraint: number;
  readonly variables: Int32Array;
  readonly weights: readonly Float64Array[];
}

const spanOf = (list: Float64Array): number => {
  let [least, greatest] = [Infinity, -Infinity];
  for (const weight of list) {
    if (weight < least) least = weight;
    if (weight > greatest) greatest = weight;
  }
  return greatest - least;
};

/** The inequalities of one constraint added up, each by how far its load can reach. */
function strainOf(constraint: number, inequalities: readonly GroupInequality[]): Strain | null {
  const [first] = inequalities;
  if (!first) return null;
  const sum = first.weights.map((list) => new Float64Array(list.length));
  for (const { weights } of inequalities) {
    const span = weights.reduce((total, list) => total + spanOf(list), 0);
    if (span === 0) continue;
    for (const [i, list] of weights.entries()) {
      const into = sum[i] as Float64Array;
      for (let g = 0; g < list.length; g++) into[g] = (into[g] as number) + (list[g] as number) / span;
    }
  }
  return { constraint, variables: first.variables, weights: sum };
}

/** The constraints that a diagram leaves out. */
export class LeftOut {
  readonly inequalities: readonly GroupInequality[];
  readonly strains: readonly Strain[];
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
    this.strains = indexes.flatMap(
      (index) =>
        strainOf(
          index,
          this.inequalities.filter((i) => i.constraint === index),
        ) ?? [],
    );
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
