import type { Choice, Narrowing, NarrowOptions, Propagation, QueryOptions } from './answers.js';
import type { BoxPool } from './box-pool.js';
import type { Core } from './core.js';
import type { Meter } from './meter.js';
import type { NarrowedCache } from './narrowed-cache.js';
import { allowChoices, enter, enterChoices, flagsOf, flagsOfVariable, noFlags } from './question.js';
import { narrowState } from './narrow-state.js';

interface Setting {
  readonly core: Core;
  readonly boxes: BoxPool;
  readonly cache: NarrowedCache;
}

/** Which values are part of a solution that keeps every choice, and (with `free`) which would be without one's own. */
export function narrow(setting: Setting, options: NarrowOptions, meter: Meter<Narrowing>): Narrowing {
  const { core, boxes, cache } = setting;
  const { network } = core;
  const choices = options.choices ?? [];
  const allowed = allowChoices(core, choices);
  const known = cache.exactly(choices);
  const state = known ?? enter(core, allowed, cache.start(core, choices));
  const watch = (found: { state: Uint32Array; witnesses: { shown: Uint32Array } }): void => {
    meter.known = () => {
      const valid = flagsOf(core, found.witnesses.shown, allowed);
      const possible = flagsOf(core, found.state, allowed);
      const undecided = possible.map((flags, x) =>
        flags.map((f, v) => (f === 1 && valid[x]?.[v] === 0 ? 1 : 0)),
      );
      return { consistent: true, valid, undecided };
    };
  };
  const narrowed =
    known ?? (state && narrowState({ network, state, boxes, diagrams: core.diagrams }, meter, watch)?.state);
  if (narrowed && !known) cache.add(choices, narrowed);
  const valid = narrowed ? flagsOf(core, narrowed, allowed) : noFlags(core);
  const consistent = narrowed !== null && narrowed !== undefined;
  if (options.free !== true) return { consistent, valid };

  const free = [...valid];
  let done = 0;
  meter.known = () => ({ consistent, valid });
  for (const { choice, state: open } of withoutEach(core, choices, cache.start(core, []))) {
    meter.report(done++, choices.length);
    const x = choice.variable;
    const task = open && { network, state: open, boxes, diagrams: core.diagrams, variables: [x] };
    const found = task && narrowState(task, meter, () => undefined);
    free[x] = found ? flagsOfVariable(core, found.state, x) : new Uint8Array(core.sizes[x] as number);
  }
  meter.report(choices.length, choices.length);
  return { consistent, valid, free };
}

interface OneOpen {
  readonly choice: Choice;
  /** Propagated under all the other choices; null where they leave nothing. */
  readonly state: Uint32Array | null;
}

/** The states under all choices but one, halving by halving: what both halves share is propagated once. */
function* withoutEach(
  core: Core,
  choices: readonly Choice[],
  state: Uint32Array | null,
): Generator<OneOpen, void> {
  const [only, ...others] = choices;
  if (only && (others.length === 0 || state === null)) yield { choice: only, state };
  if (others.length === 0) return;
  if (state === null) {
    yield* withoutEach(core, others, null);
    return;
  }
  const half = choices.length >>> 1;
  const [first, second] = [choices.slice(0, half), choices.slice(half)];
  yield* withoutEach(core, first, enterChoices(core, second, state));
  yield* withoutEach(core, second, enterChoices(core, first, state));
}

/** What local reasoning leaves, at once. */
export function propagate(core: Core, options: QueryOptions): Propagation {
  const allowed = allowChoices(core, options.choices ?? []);
  const state = enter(core, allowed);
  return {
    exact: false,
    consistent: state !== null,
    valid: state ? flagsOf(core, state, allowed) : noFlags(core),
  };
}
