import type { ConstraintSpec, SumSpec } from './problem.js';
import { compareByRank } from './rank.js';

/** One way of violating a constraint; `strict` asks a sum to stay below its limit, not at it. */
export interface Violation {
  readonly spec: ConstraintSpec;
  readonly strict?: true;
}

const negated = (values: Float64Array): Float64Array => values.map((v) => -v);

function exceedSum(spec: SumSpec): Violation {
  const terms = spec.terms.map(({ variable, weights }) => ({ variable, weights: negated(weights) }));
  const limit =
    'constant' in spec.limit
      ? { constant: -spec.limit.constant }
      : { variable: spec.limit.variable, values: negated(spec.limit.values) };
  return { spec: { kind: 'sum', id: spec.id, terms, limit }, strict: true };
}

/** The ways of violating a constraint: it is not met exactly where one of them is met. */
export function violations(spec: ConstraintSpec): Violation[] {
  switch (spec.kind) {
    case 'table': {
      const { kind, id, scope, classOf, classCount } = spec;
      const classes = classOf && classCount ? { classOf, classCount } : {};
      return [{ spec: { kind, id, scope, ...classes, allowed: spec.allowed.map((a) => 1 - a) } }];
    }
    case 'comparison': {
      const { demand, limit } = compareByRank(spec.demand.values, spec.limit.values);
      const demandSide = { ...spec.limit, values: Float64Array.from(limit, (l) => 1 - l) };
      const limitSide = { ...spec.demand, values: Float64Array.from(demand) };
      return [{ spec: { kind: 'comparison', id: spec.id, demand: demandSide, limit: limitSide } }];
    }
    case 'sum':
      return [exceedSum(spec)];
    case 'ports':
      return [{ spec: { ...spec, unmet: true } }];
  }
}
