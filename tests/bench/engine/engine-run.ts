import { type Answer, type Choice, createEngine, type Narrowing, type Solution } from '@flangewise/solver';
import type { SizeName } from './catalogue.js';
import { digest } from './digest.js';
import { makeProblem, type ShapeName } from './make-problem.js';
import { walk } from './walk.js';

export interface Instance {
  readonly size: SizeName;
  readonly shape: ShapeName;
  readonly seed: number;
}

/** Edits of the first walk at which the peers answer too. */
export const SHARED_EDITS = [1, 3, 6];

/** How often the cheapest solution is asked for again, where that is quick. */
const ASKED_AGAIN = 5;
const ASKED_AGAIN_BELOW_MS = 500;

/** Times of one instance, in ms; null stands for an answer that was not proved in time. */
export type Time = number | null;

export interface EngineRun {
  readonly items: number;
  readonly constraints: number;
  readonly load: number;
  /** The first valid options, nothing chosen yet. */
  readonly first: Time;
  readonly propagation: readonly number[];
  readonly edits: readonly Time[];
  /** The cheapest solution, nothing chosen: when it is first asked for, and the median of asking again. */
  readonly bestFirst: Time;
  readonly best: Time;
  readonly cost: number | null;
  /** The cheapest solution after each of the shared edits. */
  readonly bestAfterEdits: readonly Time[];
  readonly start: string | null;
  readonly shared: readonly {
    readonly choices: readonly Choice[];
    readonly valid: string | null;
    readonly time: Time;
  }[];
}

export interface Limits {
  readonly walks: number;
  /** Milliseconds for one set of valid options, and for one optimum. */
  readonly narrowMs: number;
  readonly bestMs: number;
}

/** Says how many milliseconds have passed: of the clock, or of the processor. */
export type Clock = () => number;

const within = (ms: number): { readonly aborted: boolean } => {
  const end = performance.now() + ms;
  return {
    get aborted() {
      return performance.now() > end;
    },
  };
};

/** Runs the engine on one instance: loads it, edits it walk by walk, and looks for the cheapest solutions. */
export function runEngine(
  { size, shape, seed }: Instance,
  limits: Limits,
  { clock, onEdited }: { clock: Clock; onEdited?: () => void },
): EngineRun {
  const timed = <T>(ask: () => Answer<T>): { time: Time; value: T | null } => {
    const start = clock();
    const answer = ask();
    const time = clock() - start;
    return answer.status === 'proved' ? { time, value: answer.value } : { time: null, value: null };
  };
  const problem = makeProblem(size, seed, shape);
  const start = clock();
  const engine = createEngine(problem);
  const load = clock() - start;
  const edits: Time[] = [];
  const propagation: number[] = [];
  const bestAfterEdits: Time[] = [];
  const shared: EngineRun['shared'][number][] = [];
  const narrow = (choices: readonly Choice[]): { time: Time; value: Narrowing | null } =>
    timed(() => engine.narrow({ choices, signal: within(limits.narrowMs) }));
  const best = (choices: readonly Choice[]): { time: Time; value: Solution | 'impossible' | null } =>
    timed(() => engine.best({ choices, objective: { kind: 'cost' }, signal: within(limits.bestMs) }));

  const first = narrow([]);
  for (let w = 0; w < limits.walks; w++) {
    const track = (choices: readonly Choice[]): Answer<Narrowing> => {
      if (choices.length === 0 && first.value) return { status: 'proved', value: first.value };
      const before = clock();
      engine.propagate({ choices });
      propagation.push(clock() - before);
      const { time, value } = narrow(choices);
      edits.push(time);
      if (w === 0 && SHARED_EDITS.includes(choices.length))
        shared.push({ choices, valid: value && digest(value.valid), time });
      return value ? { status: 'proved', value } : { status: 'not proved', known: null, reason: 'cancelled' };
    };
    if (first.value) for (const _ of walk(track, 1000 * seed + w)) continue;
  }
  onEdited?.();
  const cheapest = best([]);
  // What took long is not asked for again: it takes as long as the first time.
  const isQuick = cheapest.time !== null && cheapest.time < ASKED_AGAIN_BELOW_MS;
  const again = isQuick ? Array.from({ length: ASKED_AGAIN }, () => best([]).time) : [cheapest.time];
  for (const { choices } of shared) bestAfterEdits.push(best(choices).time);
  return {
    items: problem.variables.reduce((sum, v) => sum + v.size, 0),
    constraints: problem.constraints.length,
    ...{ load, first: first.time, propagation, edits, bestAfterEdits, shared },
    bestFirst: cheapest.time,
    best: again.sort((a, b) => (a ?? Infinity) - (b ?? Infinity))[again.length >> 1] ?? null,
    cost: cheapest.value && cheapest.value !== 'impossible' ? cheapest.value.cost : null,
    start: first.value && digest(first.value.valid),
  };
}
