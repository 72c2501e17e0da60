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

const known = new WeakMap<readonly number[], WeakMap<ConstraintSpec, Draft>>();

/** A constraint that comes back, as conditions go to and fro, is not worked out again. */
function draftOnce(spec: ConstraintSpec, sizes: readonly number[]): Draft {
  const ofSizes = known.get(sizes) ?? new WeakMap<ConstraintSpec, Draft>();
  known.set(sizes, ofSizes);
  const found = ofSizes.get(spec) ?? draft(spec, { sizes, strict: false });
  ofSizes.set(spec, found);
  return found;
}

function assemble({ problem, sizes, drafts }: Pick<Core, 'problem' | 'sizes' | 'drafts'>): Core {
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
  const drafts = new Map(
    problem.constraints.map((spec) => [
      spec.id,
      strict ? draft(spec, { sizes, strict }) : draftOnce(spec, sizes),
    ]),
  );
  return assemble({ problem, sizes, drafts });
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
  for (const spec of specs)
    drafts.set(spec.id, strict ? draft(spec, { sizes: core.sizes, strict }) : draftOnce(spec, core.sizes));
  return assemble({ problem, sizes: core.sizes, drafts });
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
  return assemble({ problem: core.problem, sizes: core.sizes, drafts });
}
