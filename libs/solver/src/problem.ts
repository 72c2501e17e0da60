/**
 * A variable takes one of the values 0 … size−1. Where several may be chosen, each in a quantity, each of them is a
 * variable and its value the quantity; a slot that may stay empty has a value for that.
 */
export interface VariableSpec {
  readonly id: string;
  readonly size: number;
  /** Integer price of each value; the cost of a solution is the sum. Omitted: 0. */
  readonly cost?: Int32Array;
  /** Days of each value; the delay of a solution is the maximum. Omitted: 0. */
  readonly delay?: Int32Array;
}

/**
 * One side of a comparison: a number for each tuple of classes.
 * `classOf[k][v]` is the class of value v of variable `scope[k]`; without `classOf` a value is its own class.
 * `values` is row-major over the class tuples (last position fastest); ±Infinity is allowed, NaN is not.
 * An empty scope is a constant: `values` has one entry.
 */
export interface Side {
  readonly scope: readonly number[];
  readonly classOf?: readonly Uint16Array[];
  readonly classCount?: readonly number[];
  readonly values: Float64Array;
}

/**
 * Allowed combinations of classes; `allowed` is row-major over class tuples, 1 = allowed.
 * `margin` (same layout) says how far each combination stays from its limit; only entries of allowed combinations count.
 */
export interface TableSpec {
  readonly kind: 'table';
  readonly id: string;
  readonly scope: readonly number[];
  readonly classOf?: readonly Uint16Array[];
  readonly classCount?: readonly number[];
  readonly allowed: Uint8Array;
  readonly margin?: Float64Array;
}

/**
 * demand ≤ limit, both rounded to 12 significant digits. The two scopes may overlap.
 * Margin `ratio`: (limit − demand) / |limit|, which is 1 − demand/limit for positive limits; `difference`: limit − demand.
 */
export interface ComparisonSpec {
  readonly kind: 'comparison';
  readonly id: string;
  readonly demand: Side;
  readonly limit: Side;
  readonly margin?: MarginKind;
}

export type MarginKind = 'ratio' | 'difference';

/** Sum of the terms' weights ≤ limit, both rounded to 12 significant digits; the terms are added in the order given. */
export interface SumSpec {
  readonly kind: 'sum';
  readonly id: string;
  readonly terms: readonly { readonly variable: number; readonly weights: Float64Array }[];
  readonly limit:
    { readonly variable: number; readonly values: Float64Array } | { readonly constant: number };
  readonly margin?: MarginKind;
}

/** What a user places on ports of the host, by its value. */
export interface PortUser {
  readonly variable: number;
  /** Sizes of the ports that it needs. */
  readonly needs: readonly Float64Array[];
  /** 1 where what it places reaches through its ports to what stands behind them. Omitted: nowhere. */
  readonly reaches?: Uint8Array;
  /** Ports that it offers in turn, each smaller than any that it needs; nothing reaches through them. */
  readonly gives?: readonly Float64Array[];
}

/** What stands behind the ports: how large a part of each class may be that reaches through, by class of the host and port. */
export interface PortObstacle {
  readonly variable: number;
  readonly classOf: Uint16Array;
  readonly leaves: readonly (readonly Float64Array[])[];
}

/**
 * Everything that is needed finds a port of its own. A port takes its own size and every smaller one; what reaches through
 * it is at most as large as each obstacle leaves there.
 */
export interface PortsSpec {
  readonly kind: 'ports';
  readonly id: string;
  readonly host: number;
  /** Sizes of the ports of each value of the host. */
  readonly hostPorts: readonly Float64Array[];
  readonly users: readonly PortUser[];
  /** Sizes of ports that stay free, whatever is chosen. */
  readonly spare?: Float64Array;
  /** How large a part may be that reaches through each port, whatever stands behind it. Omitted: as large as the port. */
  readonly through?: readonly Float64Array[];
  readonly behind?: {
    /** Class of each value of the host; values of one class have the same ports. */
    readonly hostClassOf: Uint16Array;
    readonly obstacles: readonly PortObstacle[];
  };
  /** Met exactly where the rest of the declaration is not. */
  readonly unmet?: true;
}

export type ConstraintSpec = TableSpec | ComparisonSpec | SumSpec | PortsSpec;

export interface Problem {
  readonly variables: readonly VariableSpec[];
  readonly constraints: readonly ConstraintSpec[];
}

/** A problem or a question that makes no sense: a mistake of the caller, never of the user's data. */
export class ProblemError extends Error {
  override readonly name = 'ProblemError';
  constructor(
    message: string,
    /** Id of the constraint or variable that is wrong, where there is one. */
    readonly subject?: string,
  ) {
    super(message);
  }
}
