import { findApart } from './apart.js';
import type { Audit, AuditOptions, Place } from './answers.js';
import type { BoxPool } from './box-pool.js';
import { anySolution } from './best.js';
import type { Violation } from './complement.js';
import { violations } from './complement.js';
import type { Core } from './core.js';
import { compile, recompile } from './core.js';
import type { Meter, Ticker } from './meter.js';
import { allowChoices, enter, flagsOf, noFlags } from './question.js';
import type { Allowed } from './question.js';
import { findTogether } from './together.js';
import type { SolutionPool } from './solution-pool.js';
import { narrowState } from './narrow-state.js';

/** Whether some allowed values violate a constraint, in the core that `build` makes for a violation. */
function canViolate(
  task: { violations: readonly Violation[]; allowed: Allowed; build: (violation: Violation) => Core },
  meter: Ticker,
): boolean {
  return task.violations.some((violation) => {
    meter.tick();
    return anySolution({ core: task.build(violation), allowed: task.allowed }, meter) !== null;
  });
}

function placesWhere(
  flags: readonly Uint8Array[],
  isWanted: (list: Uint8Array, value: number) => boolean,
): Place[] {
  return flags.flatMap((list, variable) =>
    [...list.keys()].filter((value) => isWanted(list, value)).map((value) => ({ variable, value })),
  );
}

/** Findings about the problem as a whole, under the given choices. */
export function audit(
  setting: { core: Core; pool: SolutionPool; boxes: BoxPool },
  options: AuditOptions,
  meter: Meter<Audit>,
): Audit {
  const { core, pool, boxes } = setting;
  const { network, problem } = core;
  const allowed = allowChoices(core, options.choices ?? []);
  const steps = 3 + problem.constraints.length;
  const state = enter(core, allowed);
  const narrowed =
    state && narrowState({ network, state, boxes, diagrams: core.diagrams }, meter, () => undefined);
  const valid = narrowed ? flagsOf(core, narrowed.state, allowed) : noFlags(core);
  const isForced = (list: Uint8Array): boolean => list.reduce((n, flag) => n + flag, 0) === 1;
  let findings: Audit = {
    consistent: narrowed !== null,
    dead: placesWhere(valid, (list, v) => list[v] === 0),
    forced: placesWhere(valid, (list, v) => list[v] === 1 && isForced(list)),
    together: [],
    togetherComplete: false,
    apart: [],
    apartComplete: false,
    redundant: [],
    neverBinding: [],
  };
  const note = (found: Partial<Audit>, done: number): void => {
    findings = { ...findings, ...found };
    meter.known = () => findings;
    meter.report(done, steps);
  };
  note({}, 1);
  const { mostTogether = 100, mostApart = 100 } = options;
  const bound = narrowed
    ? findTogether({ core, allowed, narrowed, pool, most: mostTogether }, meter)
    : { together: [], complete: true };
  note({ together: bound.together, togetherComplete: bound.complete }, 2);
  const parted = narrowed
    ? findApart({ core, allowed, narrowed, boxes, most: mostApart }, meter)
    : { apart: [], complete: true };
  note({ apart: parted.apart, apartComplete: parted.complete }, 3);
  for (const [index, spec] of problem.constraints.entries()) {
    const ways = violations(spec);
    const alone = (violation: Violation): Core =>
      compile({ variables: problem.variables, constraints: [violation.spec] }, violation);
    if (!canViolate({ violations: ways, allowed, build: alone }, meter))
      note({ neverBinding: [...findings.neverBinding, spec.id] }, 3 + index);
    const instead = (violation: Violation): Core => recompile(core, [violation.spec], violation);
    if (!canViolate({ violations: ways, allowed, build: instead }, meter))
      note({ redundant: [...findings.redundant, spec.id] }, 4 + index);
  }
  return findings;
}
