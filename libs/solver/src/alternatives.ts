import type { AlternativesOptions, Objective, Solution } from './answers.js';
import { bestSolution } from './best.js';
import type { Core } from './core.js';
import type { Meter } from './meter.js';
import { ProblemError } from './problem.js';
import type { Allowed } from './question.js';
import { allowChoices } from './question.js';

/** A part of the search space, with its best solution. */
interface Part {
  readonly allowed: Allowed;
  readonly solution: Solution;
}

/** Smaller is better. */
function rank(solution: Solution, objective: Objective): number {
  switch (objective.kind) {
    case 'cost':
      return solution.cost;
    case 'delay':
      return solution.delay;
    case 'margin':
      return -solution.margin;
    case 'mix':
      return objective.cost * solution.cost + objective.delay * solution.delay;
  }
}

const single = (size: number, value: number): Uint8Array =>
  Uint8Array.from({ length: size }, (_, v) => (v === value ? 1 : 0));

const without = (flags: Uint8Array | null, size: number, value: number): Uint8Array => {
  const rest = flags ? Uint8Array.from(flags) : new Uint8Array(size).fill(1);
  rest[value] = 0;
  return rest;
};

/** What is left of a part without its solution: for each variable, those that first differ there (Lawler 1972). */
function* remainders(core: Core, part: Part, differIn: readonly number[]): Generator<Allowed> {
  const prefix = [...part.allowed];
  for (const x of differIn) {
    const size = core.sizes[x] as number;
    const value = part.solution.solution[x] as number;
    const rest = [...prefix];
    rest[x] = without(prefix[x] ?? null, size, value);
    if (rest[x].includes(1)) yield rest;
    prefix[x] = single(size, value);
  }
}

/** The best solutions of which any two differ in one of some variables. */
export function alternatives(
  core: Core,
  options: AlternativesOptions,
  meter: Meter<readonly Solution[] | 'impossible'>,
): readonly Solution[] | 'impossible' {
  const { k, objective = { kind: 'cost' } } = options;
  if (!Number.isInteger(k) || k < 1)
    throw new ProblemError(`alternatives: k is ${String(k)}, 1 or more is needed`);
  const differIn = [...new Set(options.differIn)];
  for (const x of differIn)
    if (core.sizes[x] === undefined)
      throw new ProblemError(`alternatives: there is no variable ${String(x)} to differ in`);
  const parts: Part[] = [];
  const add = (allowed: Allowed): void => {
    const solution = bestSolution({ core, allowed }, objective, { meter, watch: () => undefined });
    if (solution) parts.push({ allowed, solution });
  };
  add(allowChoices(core, options.choices ?? []));
  const found: Solution[] = [];
  while (found.length < k && parts.length > 0) {
    parts.sort((a, b) => rank(b.solution, objective) - rank(a.solution, objective));
    const part = parts.pop() as Part;
    found.push(part.solution);
    meter.known = () => found;
    meter.report(found.length, k);
    if (found.length < k) for (const rest of remainders(core, part, differIn)) add(rest);
  }
  return found.length === 0 ? 'impossible' : found;
}
