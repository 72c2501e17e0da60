import type {
  ComparisonSpec,
  ConstraintSpec,
  PortsSpec,
  Problem,
  Side,
  SumSpec,
  TableSpec,
} from './problem.js';
import { ProblemError } from './problem.js';

/** Largest class count, value count and (as a safeguard against mistakes) number of class tuples in one table. */
const MOST_VALUES = 65_535;

type Sizes = readonly number[];

function checkVariable(sizes: Sizes, variable: number, id: string): void {
  if (!Number.isInteger(variable) || variable < 0 || variable >= sizes.length)
    throw new ProblemError(
      `constraint ${id}: variable ${String(variable)} is not between 0 and ${String(sizes.length - 1)}`,
      id,
    );
}

function checkLength(id: string, what: string, lengths: { given: number; wanted: number }): void {
  if (lengths.given !== lengths.wanted)
    throw new ProblemError(
      `constraint ${id}: ${what} has ${String(lengths.given)} entries, ${String(lengths.wanted)} are needed`,
      id,
    );
}

function checkNumbers(id: string, what: string, numbers: Float64Array): void {
  let at = 0;
  while (at < numbers.length && !Number.isNaN(numbers[at])) at++;
  if (at < numbers.length)
    throw new ProblemError(`constraint ${id}: ${what} is NaN at entry ${String(at)}`, id);
}

/** Checks scope and classes, and returns the number of class tuples. */
function checkClassed(id: string, classed: TableSpec | Side, sizes: Sizes): number {
  const { scope, classOf, classCount } = classed;
  if ((classOf === undefined) !== (classCount === undefined))
    throw new ProblemError(`constraint ${id}: classOf and classCount go together; give both or neither`, id);
  if (new Set(scope).size !== scope.length)
    throw new ProblemError(`constraint ${id}: a variable stands twice in one scope`, id);
  if (classOf) checkLength(id, 'classOf', { given: classOf.length, wanted: scope.length });
  if (classCount) checkLength(id, 'classCount', { given: classCount.length, wanted: scope.length });
  let tuples = 1;
  for (const [position, variable] of scope.entries()) {
    checkVariable(sizes, variable, id);
    const size = sizes[variable] as number;
    const count = classCount?.[position] ?? size;
    const classes = classOf?.[position];
    if (classes) {
      checkLength(id, `classOf[${String(position)}]`, { given: classes.length, wanted: size });
      const wrong = classes.findIndex((c) => c >= count);
      if (wrong >= 0)
        throw new ProblemError(
          `constraint ${id}: classOf[${String(position)}][${String(wrong)}] is ${String(classes[wrong])}, below ${String(count)} is needed`,
          id,
        );
    }
    tuples *= count;
  }
  return tuples;
}

function checkTable(spec: TableSpec, sizes: Sizes): void {
  const wanted = checkClassed(spec.id, spec, sizes);
  checkLength(spec.id, 'allowed', { given: spec.allowed.length, wanted });
  const wrong = spec.allowed.findIndex((x) => x > 1);
  if (wrong >= 0)
    throw new ProblemError(
      `constraint ${spec.id}: allowed is neither 0 nor 1 at entry ${String(wrong)}`,
      spec.id,
    );
  if (spec.margin) {
    checkLength(spec.id, 'margin', { given: spec.margin.length, wanted });
    for (let t = 0; t < wanted; t++)
      if (spec.allowed[t] === 1 && Number.isNaN(spec.margin[t]))
        throw new ProblemError(`constraint ${spec.id}: margin is NaN at allowed entry ${String(t)}`, spec.id);
  }
}

function checkSide(spec: ComparisonSpec, name: 'demand' | 'limit', sizes: Sizes): void {
  const side = spec[name];
  const wanted = checkClassed(spec.id, side, sizes);
  checkLength(spec.id, `${name}.values`, { given: side.values.length, wanted });
  checkNumbers(spec.id, `${name}.values`, side.values);
}

function checkSum(spec: SumSpec, sizes: Sizes): void {
  for (const [index, term] of spec.terms.entries()) {
    checkVariable(sizes, term.variable, spec.id);
    const wanted = sizes[term.variable] as number;
    checkLength(spec.id, `terms[${String(index)}].weights`, { given: term.weights.length, wanted });
    const wrong = term.weights.findIndex((x) => !Number.isFinite(x));
    if (wrong >= 0)
      throw new ProblemError(
        `constraint ${spec.id}: terms[${String(index)}].weights[${String(wrong)}] is ${String(term.weights[wrong])}, a finite number is needed; forbid a value by a table`,
        spec.id,
      );
  }
  if ('constant' in spec.limit) checkNumbers(spec.id, 'limit', Float64Array.of(spec.limit.constant));
  else {
    checkVariable(sizes, spec.limit.variable, spec.id);
    const wanted = sizes[spec.limit.variable] as number;
    checkLength(spec.id, 'limit.values', { given: spec.limit.values.length, wanted });
    checkNumbers(spec.id, 'limit.values', spec.limit.values);
  }
}

function checkBehind(spec: PortsSpec, sizes: Sizes): void {
  const { behind } = spec;
  if (behind === undefined) return;
  checkLength(spec.id, 'behind.hostClassOf', {
    given: behind.hostClassOf.length,
    wanted: sizes[spec.host] as number,
  });
  const ports: number[] = [];
  for (const [value, c] of behind.hostClassOf.entries()) {
    const given = spec.hostPorts[value]?.length ?? 0;
    if ((ports[c] ??= given) !== given)
      throw new ProblemError(
        `constraint ${spec.id}: hosts of class ${String(c)} have different ports`,
        spec.id,
      );
  }
  const standing = behind.obstacles.map((o) => o.variable);
  if (new Set([spec.host, ...standing]).size <= standing.length)
    throw new ProblemError(
      `constraint ${spec.id}: a variable stands behind the ports once, and is not their host`,
      spec.id,
    );
  for (const [o, { variable, classOf, leaves }] of behind.obstacles.entries()) {
    const what = `behind.obstacles[${String(o)}]`;
    checkVariable(sizes, variable, spec.id);
    checkLength(spec.id, `${what}.classOf`, { given: classOf.length, wanted: sizes[variable] as number });
    for (const c of new Set(classOf))
      for (const [host, wanted] of ports.entries()) {
        const list = leaves[c]?.[host] ?? new Float64Array();
        checkLength(spec.id, `${what}.leaves`, { given: list.length, wanted });
        checkNumbers(spec.id, `${what}.leaves`, list);
      }
  }
}

function checkPorts(spec: PortsSpec, sizes: Sizes): void {
  const parts = [
    { variable: spec.host, lists: spec.hostPorts, what: 'hostPorts' },
    ...(spec.through === undefined ? [] : [{ variable: spec.host, lists: spec.through, what: 'through' }]),
    ...spec.users.flatMap(({ variable, needs, gives }, i) => [
      { variable, lists: needs, what: `users[${String(i)}].needs` },
      ...(gives === undefined ? [] : [{ variable, lists: gives, what: `users[${String(i)}].gives` }]),
    ]),
  ];
  const seen = new Set<number>();
  for (const variable of [spec.host, ...spec.users.map((u) => u.variable)]) {
    checkVariable(sizes, variable, spec.id);
    if (seen.has(variable))
      throw new ProblemError(
        `constraint ${spec.id}: variable ${String(variable)} stands twice; host and users are different variables`,
        spec.id,
      );
    seen.add(variable);
  }
  for (const { variable, lists, what } of parts) {
    checkLength(spec.id, what, { given: lists.length, wanted: sizes[variable] as number });
    for (const list of lists) checkNumbers(spec.id, what, list);
  }
  for (const { needs, gives } of spec.users)
    for (const [value, list] of (gives ?? []).entries())
      if (Math.max(...list) >= Math.min(...(needs[value] as Float64Array)))
        throw new ProblemError(
          `constraint ${spec.id}: a port that is given is smaller than those that its giver needs`,
          spec.id,
        );
  checkNumbers(spec.id, 'spare', spec.spare ?? new Float64Array());
  checkBehind(spec, sizes);
}

function checkConstraint(spec: ConstraintSpec, sizes: Sizes): void {
  switch (spec.kind) {
    case 'table':
      return checkTable(spec, sizes);
    case 'comparison':
      checkSide(spec, 'demand', sizes);
      return checkSide(spec, 'limit', sizes);
    case 'sum':
      return checkSum(spec, sizes);
    case 'ports':
      return checkPorts(spec, sizes);
  }
}

/**
 * Checks a problem once, before anything is compiled.
 * @throws ProblemError naming the variable or constraint, what was given and what is needed
 */
export function checkProblem(problem: Problem): void {
  for (const { id, size, cost, delay } of problem.variables) {
    if (!Number.isInteger(size) || size < 1 || size > MOST_VALUES)
      throw new ProblemError(
        `variable ${id}: size is ${String(size)}, 1 to ${String(MOST_VALUES)} is needed`,
        id,
      );
    for (const [what, list] of [['cost', cost] as const, ['delay', delay] as const])
      if (list && list.length !== size)
        throw new ProblemError(
          `variable ${id}: ${what} has ${String(list.length)} entries, ${String(size)} are needed`,
          id,
        );
  }
  const sizes = problem.variables.map((v) => v.size);
  checkConstraints(sizes, problem.constraints);
}

/**
 * Checks constraints over variables of these sizes.
 * @throws ProblemError as `checkProblem` does
 */
export function checkConstraints(sizes: readonly number[], constraints: readonly ConstraintSpec[]): void {
  const ids = new Set<string>();
  for (const spec of constraints) {
    if (ids.has(spec.id)) throw new ProblemError(`constraint ${spec.id} is declared twice`, spec.id);
    ids.add(spec.id);
    checkConstraint(spec, sizes);
  }
}
