import type { Place } from './answers.js';
import type { Core } from './core.js';
import type { Ticker } from './meter.js';
import type { Allowed } from './question.js';
import { allowChoices } from './question.js';
import { Search } from './search.js';
import { restrict } from './question.js';
import type { NarrowedState } from './narrow-state.js';
import type { SolutionPool } from './solution-pool.js';

interface TogetherTask {
  readonly core: Core;
  readonly allowed: Allowed;
  readonly narrowed: NarrowedState;
  readonly pool: SolutionPool;
  readonly most: number;
}

/** A value that alone makes up its group, with its group. */
interface Candidate extends Place {
  readonly group: number;
}

/** A solution with one of two values and without the other, or null. */
function onlyOne(
  task: TogetherTask,
  pair: { has: Candidate; lacks: Candidate },
  meter: Ticker,
): Int32Array | null {
  const { core, narrowed } = task;
  const { network } = core;
  network.state = Uint32Array.from(narrowed.state);
  network.drop(pair.lacks.variable, pair.lacks.group);
  if (!restrict(core, allowChoices(core, [pair.has]))) return null;
  return new Search(network, meter).solve(network.state);
}

/** Valid values that may be bound to others: not forced, alone in their group. */
function candidates({ core, allowed, narrowed }: TogetherTask): Candidate[] {
  const { layout } = core;
  const found: Candidate[] = [];
  for (let x = 0; x < layout.variables; x++) {
    const flags = allowed[x];
    const own: Candidate[] = [];
    let valid = 0;
    for (const [group, members] of (layout.members[x] ?? []).entries()) {
      const word = narrowed.state[(layout.domain[x] as number) + (group >>> 5)] as number;
      if (((word >>> (group & 31)) & 1) === 0) continue;
      const values = members.filter((v) => !flags || flags[v] === 1);
      valid += values.length;
      if (values.length === 1) own.push({ variable: x, value: values[0] as number, group });
    }
    if (valid > 1) found.push(...own);
  }
  return found;
}

/**
 * Pairs of values of which every solution has both or neither. Values that occur in the same known solutions are the candidates;
 * each pair is then proved, or refuted by a solution that separates more of them.
 */
export function findTogether(
  task: TogetherTask,
  meter: Ticker,
): { together: (readonly [Place, Place])[]; complete: boolean } {
  const { core, narrowed, pool, most } = task;
  let classes: Candidate[][] = [candidates(task)];
  const separate = (solution: Int32Array): void => {
    classes = classes
      .flatMap((list) => [
        list.filter((c) => solution[c.variable] === c.group),
        list.filter((c) => solution[c.variable] !== c.group),
      ])
      .filter((list) => list.length > 1);
  };
  for (const solution of pool.within(core.network, narrowed.state)) separate(solution);
  const together: (readonly [Place, Place])[] = [];
  const place = ({ variable, value }: Place): Place => ({ variable, value });
  for (;;) {
    const list = classes.shift();
    if (!list) return { together, complete: true };
    const [first, ...others] = list as [Candidate, ...Candidate[]];
    const bound: Candidate[] = [first];
    let separated = false;
    for (const other of others) {
      meter.tick();
      const solution =
        onlyOne(task, { has: first, lacks: other }, meter) ??
        onlyOne(task, { has: other, lacks: first }, meter);
      if (!solution) {
        bound.push(other);
        continue;
      }
      // Put the class back and let the solution separate it.
      pool.add(solution);
      classes.push(list);
      separate(solution);
      separated = true;
      break;
    }
    if (separated) continue;
    for (const [i, a] of bound.entries())
      for (const b of bound.slice(i + 1)) {
        if (together.length >= most) return { together, complete: false };
        together.push([place(a), place(b)]);
      }
  }
}
