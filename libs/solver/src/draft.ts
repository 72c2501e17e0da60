import type { ClassMap } from './class-map.js';
import { classMap } from './class-map.js';
import { ComparisonConstraint } from './comparison-constraint.js';
import type { Constraint } from './constraint.js';
import { buildDecisionDiagram } from './decision-diagram.js';
import { draftPorts } from './draft-ports.js';
import type { Grid } from './grid.js';
import { readGrid, reduceGrid } from './grid.js';
import { PortsConstraint } from './ports-constraint.js';
import type { ComparisonSpec, ConstraintSpec, PortsSpec, SumSpec, TableSpec } from './problem.js';
import { keepMargin } from './keep-margin.js';
import { compareByRank } from './rank.js';
import type { Addend, SumPlace } from './sum-constraint.js';
import { SumConstraint } from './sum-constraint.js';
import { TableConstraint } from './table-constraint.js';

/** A constraint worked out as far as it can be without the layout of the whole problem. */
export interface Draft {
  readonly spec: ConstraintSpec;
  /** What it tells apart; variables that make no difference to it are left out. */
  readonly maps: readonly ClassMap[];
  /** Ties it to the views of its maps, in their order. */
  bind(views: Int32Array): Constraint;
}

export interface DraftOptions {
  readonly sizes: readonly number[];
  /**
   * Margin to keep, in a constraint that declares one. The classes then do not depend on the numbers; without,
   * classes that the constraint does not tell apart are merged.
   */
  readonly atLeast?: number;
  /** A sum stays below its limit, not at it. */
  readonly strict: boolean;
}

/** Tuples up to which a comparison whose sides share variables becomes a table. */
const LARGEST_SHARED_TABLE = 2_000_000;

const dropSingle = (grid: Grid): Grid => ({ maps: grid.maps.filter((m) => m.count > 1), cells: grid.cells });

const settle = (grid: Grid, options: DraftOptions): Grid =>
  options.atLeast === undefined ? reduceGrid(grid) : dropSingle(grid);

function draftGrid(spec: ConstraintSpec, grid: Grid, options: DraftOptions): Draft {
  const { maps, cells } = grid;
  if (maps.length === 0) return draftConstant(spec, cells[0] === 1, options);
  const diagram = buildDecisionDiagram(
    maps.map((m) => m.count),
    cells,
  );
  return { spec, maps, bind: (views) => new TableConstraint(spec, { diagram, views, sizes: options.sizes }) };
}

/** Always met or never. */
function draftConstant(spec: ConstraintSpec, isMet: boolean, options: DraftOptions): Draft {
  const demand = { counts: [], loads: Int32Array.of(isMet ? 0 : 1) };
  const limit = { counts: [], loads: Int32Array.of(0) };
  const bound = { demand, limit, variables: [], sizes: options.sizes };
  return { spec, maps: [], bind: (views) => new ComparisonConstraint(spec, { ...bound, views }) };
}

function draftTable(spec: TableSpec, options: DraftOptions): Draft {
  const { allowed, margin } = spec;
  const { atLeast = -Infinity } = options;
  const cells = Int32Array.from(allowed);
  if (margin) for (let t = 0; t < cells.length; t++) if ((margin[t] as number) < atLeast) cells[t] = 0;
  const grid = readGrid(spec, options.sizes, cells);
  return draftGrid(spec, settle(grid, options), options);
}

/** The allowed tuples over the variables of both sides. */
function joinSides(demand: Grid, limit: Grid): Grid | null {
  const all = [...demand.maps, ...limit.maps];
  const variables = [...new Set(all.map((m) => m.variable))];
  // A class of the joint table is a pair of classes, one on each side.
  const joint = variables.map((variable) => {
    const parts = all.filter((m) => m.variable === variable);
    const size = (parts[0] as ClassMap).classOf.length;
    const keys = Array.from({ length: size }, (_, v) => parts.map((p) => p.classOf[v] as number).join());
    return classMap(variable, keys);
  });
  const tuples = joint.reduce((product, j) => product * j.map.count, 1);
  if (tuples > LARGEST_SHARED_TABLE) return null;
  const sideLoads = (side: Grid, isLimit: boolean): Int32Array => {
    let index = new Int32Array(1);
    for (const { map, origin } of joint) {
      const p = side.maps.findIndex((m) => m.variable === map.variable);
      const stride = side.maps.slice(p + 1).reduce((product, m) => product * m.count, 1);
      const isShared = all.filter((m) => m.variable === map.variable).length > 1;
      const next = new Int32Array(index.length * map.count);
      for (let i = 0; i < index.length; i++)
        for (let c = 0; c < map.count; c++) {
          const own = Number((origin[c] as string).split(',')[isShared && isLimit ? 1 : 0]);
          next[i * map.count + c] = (index[i] as number) + (p < 0 ? 0 : own * stride);
        }
      index = next;
    }
    return index.map((i) => side.cells[i] as number);
  };
  const demands = sideLoads(demand, false);
  const limits = sideLoads(limit, true);
  return {
    maps: joint.map((j) => j.map),
    cells: demands.map((d, t) => (d + (limits[t] as number) <= 0 ? 1 : 0)),
  };
}

function draftComparison(spec: ComparisonSpec, options: DraftOptions): Draft {
  const sides =
    spec.margin === undefined || options.atLeast === undefined
      ? { demand: spec.demand.values, limit: spec.limit.values }
      : keepMargin(spec, spec.margin, options.atLeast);
  const loads = compareByRank(sides.demand, sides.limit);
  const demand = settle(readGrid(spec.demand, options.sizes, loads.demand), options);
  const limit = settle(readGrid(spec.limit, options.sizes, loads.limit), options);
  const maps = [...demand.maps, ...limit.maps];
  const variables = maps.map((m) => m.variable);
  if (new Set(variables).size < variables.length) {
    const joint = joinSides(demand, limit);
    if (joint) return draftGrid(spec, settle(joint, options), options);
  }
  const table = (grid: Grid) => ({ counts: grid.maps.map((m) => m.count), loads: grid.cells });
  const bound = { demand: table(demand), limit: table(limit), variables, sizes: options.sizes };
  return { spec, maps, bind: (views) => new ComparisonConstraint(spec, { ...bound, views }) };
}

function draftSum(spec: SumSpec, options: DraftOptions): Draft {
  const limitVariable = 'constant' in spec.limit ? -1 : spec.limit.variable;
  const limitValues = 'constant' in spec.limit ? null : spec.limit.values;
  const constant = 'constant' in spec.limit ? spec.limit.constant : 0;
  const variables = [
    ...new Set([...spec.terms.map((t) => t.variable), ...(limitVariable < 0 ? [] : [limitVariable])]),
  ];
  const maps: ClassMap[] = [];
  const places: SumPlace[] = [];
  const positionOf = new Map<number, number>();
  const first: Int32Array[] = [];
  let fixedLoad = 0;
  let fixedLimit: number | null = null;
  for (const variable of variables) {
    const terms = spec.terms.filter((t) => t.variable === variable);
    const isLimit = variable === limitVariable;
    const size = options.sizes[variable] as number;
    const keys = Array.from({ length: size }, (_, v) =>
      [...terms.map((t) => t.weights[v]), ...(isLimit ? [limitValues?.[v]] : [])].join(),
    );
    const { map } = classMap(variable, keys);
    const examples = Int32Array.from({ length: map.count }, (_, c) => map.classOf.indexOf(c));
    const loads = Float64Array.from(examples, (v) =>
      terms.reduce((sum, t) => sum + (t.weights[v] as number), 0),
    );
    const limits = isLimit ? Float64Array.from(examples, (v) => limitValues?.[v] as number) : null;
    if (map.count === 1) {
      fixedLoad += loads[0] as number;
      if (limits) fixedLimit = limits[0] as number;
      continue;
    }
    positionOf.set(variable, maps.length);
    first.push(examples);
    maps.push(map);
    places.push({ loads, limits });
  }
  const addends: Addend[] = spec.terms.map(({ variable, weights }) => {
    const position = positionOf.get(variable) ?? -1;
    const examples = position < 0 ? Int32Array.of(0) : (first[position] as Int32Array);
    return { position, weights: Float64Array.from(examples, (v) => weights[v] as number) };
  });
  const atLeast = spec.margin === undefined ? undefined : options.atLeast;
  const margin = atLeast === undefined || spec.margin === undefined ? null : { kind: spec.margin, atLeast };
  const bound = {
    places,
    addends,
    constant: fixedLimit ?? constant,
    fixedLoad,
    margin,
    strict: options.strict,
    sizes: options.sizes,
  };
  return { spec, maps, bind: (views) => new SumConstraint(spec, { ...bound, views }) };
}

function bindPorts(spec: PortsSpec, options: DraftOptions): Draft {
  const { maps, bound } = draftPorts(spec);
  return {
    spec,
    maps,
    bind: (views) => new PortsConstraint(spec, { ...bound, sizes: options.sizes, views }),
  };
}

/** Works out one constraint. The problem has been checked. */
export function draft(spec: ConstraintSpec, options: DraftOptions): Draft {
  switch (spec.kind) {
    case 'table':
      return draftTable(spec, options);
    case 'comparison':
      return draftComparison(spec, options);
    case 'sum':
      return draftSum(spec, options);
    case 'ports':
      return bindPorts(spec, options);
  }
}
