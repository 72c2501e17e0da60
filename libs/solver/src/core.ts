import type { Constraint } from './constraint.js';
import { Diagrams } from './diagrams.js';
import type { Draft } from './draft.js';
import { draft } from './draft.js';
import type { Layout } from './layout.js';
import { makeLayout, openState } from './layout.js';
import { Network } from './network.js';
import type { ConstraintSpec, Problem } from './problem.js';

/** A compiled problem: everything the queries work on. */
export interface Core {
  readonly problem: Problem;
  readonly sizes: readonly number[];
  readonly drafts: ReadonlyMap<string, Draft>;
  readonly layout: Layout;
  readonly constraints: readonly Constraint[];
  readonly network: Network;
  /** State after propagating without choices; null where that fails. */
  readonly root: Uint32Array | null;
  readonly diagrams: Diagrams | null;
}

/** Propagates from scratch with the constraints that are active. @returns null where that fails */
export function propagatedRoot(network: Network): Uint32Array | null {
  network.state = openState(network.layout);
  network.enqueueEverything();
  return network.run() ? network.state : null;
}

function assemble(problem: Problem, drafts: ReadonlyMap<string, Draft>): Core {
  const sizes = problem.variables.map((v) => v.size);
  const list = problem.constraints.map((spec) => drafts.get(spec.id) as Draft);
  const { layout, viewIds } = makeLayout(
    sizes,
    list.map((d) => d.maps),
  );
  const constraints = list.map((d, i) => d.bind(viewIds[i] as Int32Array));
  const network = new Network(layout, constraints);
  const root = propagatedRoot(network);
  const diagrams = root && new Diagrams(network, root);
  return { problem, sizes, drafts, layout, constraints, network, root, diagrams };
}

export function compile(problem: Problem, options: { readonly strict?: true } = {}): Core {
  const sizes = problem.variables.map((v) => v.size);
  const { strict = false } = options;
  const drafts = new Map(problem.constraints.map((spec) => [spec.id, draft(spec, { sizes, strict })]));
  return assemble(problem, drafts);
}

/** The same problem with some constraints replaced; the others are not worked out again. */
export function recompile(
  core: Core,
  specs: readonly ConstraintSpec[],
  options: { readonly strict?: true } = {},
): Core {
  const { strict = false } = options;
  const byId = new Map(specs.map((spec) => [spec.id, spec]));
  const problem = {
    variables: core.problem.variables,
    constraints: core.problem.constraints.map((spec) => byId.get(spec.id) ?? spec),
  };
  const drafts = new Map(core.drafts);
  for (const spec of specs) drafts.set(spec.id, draft(spec, { sizes: core.sizes, strict }));
  return assemble(problem, drafts);
}

/**
 * The same problem, in which every constraint that declares a margin must keep at least this one.
 * Such a core has groups of its own, the same whatever the margin.
 */
export function withMargin(core: Core, atLeast: number): Core {
  const drafts = new Map(core.drafts);
  for (const spec of core.problem.constraints)
    if (spec.kind !== 'ports' && spec.margin !== undefined)
      drafts.set(spec.id, draft(spec, { sizes: core.sizes, atLeast, strict: false }));
  return assemble(core.problem, drafts);
}
