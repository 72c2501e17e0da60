import type { Answer, Choice, Engine } from '@flangewise/solver';
import { randomFrom } from './random.js';

/** Fills a system slot by slot, in random order, with values that are valid at the time; yields the choices after each edit. */
export function* walk(
  narrowedBy: (choices: readonly Choice[]) => Answer<{ readonly valid: readonly Uint8Array[] }>,
  seed: number,
): Generator<readonly Choice[], void> {
  const random = randomFrom(seed);
  const choices: Choice[] = [];
  let narrowed = narrowedBy(choices);
  const variables = narrowed.status === 'proved' ? random.shuffled([...narrowed.value.valid.keys()]) : [];
  for (const variable of variables) {
    if (narrowed.status !== 'proved') return;
    const open = [...(narrowed.value.valid[variable] ?? [])].flatMap((flag, v) => (flag === 1 ? [v] : []));
    choices.push({ variable, value: random.pick(open) });
    narrowed = narrowedBy([...choices]);
    yield [...choices];
  }
}

/** Choices after the first edits of a walk. */
export function firstEdits(engine: Engine, seed: number, edits: number): readonly Choice[] {
  for (const choices of walk((c) => engine.narrow({ choices: c }), seed))
    if (choices.length === edits) return choices;
  throw new Error('the walk ended early');
}
