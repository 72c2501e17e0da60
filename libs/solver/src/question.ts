import type { Choice } from './answers.js';
import type { Core } from './core.js';
import { ProblemError } from './problem.js';
import { hasGroup } from './search.js';

/** The values that a query may use: for each variable a list of flags, or null for all. */
export type Allowed = (Uint8Array | null)[];

function checkPlace(core: Core, place: { variable: number; value: number }): void {
  const { variable, value } = place;
  const spec = core.problem.variables[variable];
  if (!spec)
    throw new ProblemError(
      `variable ${String(variable)} is not between 0 and ${String(core.problem.variables.length - 1)}`,
    );
  if (!Number.isInteger(value) || value < 0 || value >= spec.size)
    throw new ProblemError(
      `value ${String(value)} of variable ${spec.id} is not between 0 and ${String(spec.size - 1)}`,
      spec.id,
    );
}

/** @throws ProblemError where a choice is out of range, chosen twice, or its priority is not above 0 */
export function checkChoices(core: Core, choices: readonly Choice[]): void {
  const seen = new Set<number>();
  for (const choice of choices) {
    checkPlace(core, choice);
    const { id } = core.problem.variables[choice.variable] as { id: string };
    if (seen.has(choice.variable))
      throw new ProblemError(`variable ${id} is chosen twice; give one value`, id);
    if (choice.priority !== undefined && !(choice.priority > 0 && Number.isFinite(choice.priority)))
      throw new ProblemError(
        `variable ${id}: priority ${String(choice.priority)} is not a number above 0`,
        id,
      );
    seen.add(choice.variable);
  }
}

export function checkOption(core: Core, option: { variable: number; value: number }): void {
  checkPlace(core, option);
}

const only = (size: number, value: number): Uint8Array => {
  const flags = new Uint8Array(size);
  flags[value] = 1;
  return flags;
};

/** Allows the chosen values alone, and everything of the variables that are not chosen. */
export function allowChoices(core: Core, choices: readonly Choice[]): Allowed {
  const allowed: Allowed = core.sizes.map(() => null);
  for (const { variable, value } of choices) allowed[variable] = only(core.sizes[variable] as number, value);
  return allowed;
}

/**
 * Narrows the network's state to the allowed values and propagates.
 * @returns false where nothing is left
 */
export function restrict(core: Core, allowed: Allowed): boolean {
  const { layout, network } = core;
  const { state } = network;
  for (let x = 0; x < layout.variables; x++) {
    const flags = allowed[x];
    if (!flags) continue;
    const groupOf = layout.groupOf[x] as Uint16Array;
    const start = layout.domain[x] as number;
    const kept = new Uint32Array((layout.domain[x + 1] as number) - start);
    for (let v = 0; v < groupOf.length; v++) {
      const g = groupOf[v] as number;
      if (flags[v] === 1) kept[g >>> 5] = (kept[g >>> 5] as number) | (1 << (g & 31));
    }
    for (let w = 0; w < kept.length; w++)
      state[start + w] = (state[start + w] as number) & (kept[w] as number);
    network.touch(x);
  }
  return network.run();
}

/**
 * The propagated state of a query, or null where local reasoning refutes it.
 * @param start a state of fewer restrictions to start from
 */
export function enter(core: Core, allowed: Allowed, start = core.root): Uint32Array | null {
  if (!start) return null;
  core.network.state = Uint32Array.from(start);
  return restrict(core, allowed) ? core.network.state : null;
}

/** The same for choices alone. */
export function enterChoices(
  core: Core,
  choices: readonly Choice[],
  start: Uint32Array | null,
): Uint32Array | null {
  if (!start) return null;
  const { layout, network } = core;
  network.state = start;
  const groups = choices.map(({ variable, value }) => layout.groupOf[variable]?.[value] as number);
  if (choices.some(({ variable }, i) => !hasGroup(network, variable, groups[i] as number))) return null;
  network.state = Uint32Array.from(start);
  for (const [i, { variable }] of choices.entries()) network.fix(variable, groups[i] as number);
  return network.run() ? network.state : null;
}

/** Which values of one variable are in a group that `words` (laid out as domains) contains. */
export function flagsOfVariable({ layout }: Core, words: Uint32Array, x: number): Uint8Array {
  const start = layout.domain[x] as number;
  return Uint8Array.from(
    layout.groupOf[x] as Uint16Array,
    (g) => ((words[start + (g >>> 5)] as number) >>> (g & 31)) & 1,
  );
}

/** Which values of each variable are allowed and in a group that `words` (laid out as domains) contains. */
export function flagsOf(core: Core, words: Uint32Array, allowed: Allowed): Uint8Array[] {
  const { layout } = core;
  return layout.groupOf.map((groupOf, x) => {
    const start = layout.domain[x] as number;
    const flags = allowed[x];
    const found = new Uint8Array(groupOf.length);
    for (let v = 0; v < groupOf.length; v++) {
      const g = groupOf[v] as number;
      if (flags && flags[v] === 0) continue;
      found[v] = ((words[start + (g >>> 5)] as number) >>> (g & 31)) & 1;
    }
    return found;
  });
}

export const noFlags = (core: Core): Uint8Array[] => core.sizes.map((size) => new Uint8Array(size));
