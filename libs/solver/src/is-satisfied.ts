import type { ComparisonSpec, ConstraintSpec, MarginKind, Side, SumSpec, TableSpec } from './problem.js';
import { portsFit } from './ports-fit.js';
import { roundTo12Digits } from './rounding.js';

/*
 * The meaning of each kind of constraint, read straight from its declaration and sharing nothing with propagation:
 * every solution is checked here again before it is returned.
 */

interface Classed {
  readonly scope: readonly number[];
  readonly classOf?: readonly Uint16Array[];
  readonly classCount?: readonly number[];
}

/** Row-major index of the class tuple that a solution falls into. */
function tupleIndex(classed: Classed, sizes: readonly number[], solution: Int32Array): number {
  let index = 0;
  for (const [position, variable] of classed.scope.entries()) {
    const value = solution[variable] as number;
    const count = classed.classCount?.[position] ?? (sizes[position] as number);
    index = index * count + (classed.classOf?.[position]?.[value] ?? value);
  }
  return index;
}

/** Size of each variable, by number. */
export type Sizes = readonly number[];

const sizesOf = (scope: readonly number[], sizes: Sizes): number[] => scope.map((v) => sizes[v] as number);

const sideValue = (side: Side, sizes: Sizes, solution: Int32Array): number =>
  side.values[tupleIndex(side, sizesOf(side.scope, sizes), solution)] as number;

function sumSides(spec: SumSpec, solution: Int32Array): { demand: number; limit: number } {
  let demand = 0;
  for (const term of spec.terms) demand += term.weights[solution[term.variable] as number] as number;
  const limit =
    'constant' in spec.limit
      ? spec.limit.constant
      : (spec.limit.values[solution[spec.limit.variable] as number] as number);
  return { demand, limit };
}

/**
 * How far a demand stays below its limit, both rounded: at least 0 exactly where demand ≤ limit. Never NaN;
 * +Infinity where nothing bounds it.
 */
export function marginBetween(demand: number, limit: number, kind: MarginKind): number {
  return marginOfRounded(roundTo12Digits(demand), roundTo12Digits(limit), kind);
}

/** The same for numbers that are rounded already. */
export function marginOfRounded(d: number, l: number, kind: MarginKind): number {
  if (d === l) return 0;
  if (kind === 'difference') return l - d;
  if (l === Infinity) return 1;
  if (l === 0 || l === -Infinity) return d < l ? 1 : -Infinity;
  return (l - d) / Math.abs(l);
}

const tableIndex = (spec: TableSpec, sizes: Sizes, solution: Int32Array): number =>
  tupleIndex(spec, sizesOf(spec.scope, sizes), solution);

const comparisonSides = (spec: ComparisonSpec, sizes: Sizes, solution: Int32Array) => ({
  demand: sideValue(spec.demand, sizes, solution),
  limit: sideValue(spec.limit, sizes, solution),
});

const isMet = ({ demand, limit }: { demand: number; limit: number }): boolean =>
  roundTo12Digits(demand) <= roundTo12Digits(limit);

/** Whether a solution (value of each variable) meets a constraint. */
export function isSatisfied(spec: ConstraintSpec, sizes: Sizes, solution: Int32Array): boolean {
  switch (spec.kind) {
    case 'table':
      return spec.allowed[tableIndex(spec, sizes, solution)] === 1;
    case 'comparison':
      return isMet(comparisonSides(spec, sizes, solution));
    case 'sum':
      return isMet(sumSides(spec, solution));
    case 'ports':
      return portsFit(spec, solution) !== (spec.unmet ?? false);
  }
}

/** Margin of a solution in a constraint; +Infinity where the constraint declares none. */
export function marginOf(spec: ConstraintSpec, sizes: Sizes, solution: Int32Array): number {
  switch (spec.kind) {
    case 'table':
      return spec.margin?.[tableIndex(spec, sizes, solution)] ?? Infinity;
    case 'comparison': {
      if (spec.margin === undefined) return Infinity;
      const { demand, limit } = comparisonSides(spec, sizes, solution);
      return marginBetween(demand, limit, spec.margin);
    }
    case 'sum': {
      if (spec.margin === undefined) return Infinity;
      const { demand, limit } = sumSides(spec, solution);
      return marginBetween(demand, limit, spec.margin);
    }
    case 'ports':
      return Infinity;
  }
}
