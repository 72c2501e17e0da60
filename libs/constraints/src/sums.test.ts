import type { Item, SlotName } from '@flangewise/model';
import { systemSchema } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { assessRule } from './assess-rule.js';
import { compileFor, createBench } from './bench.js';
import { engineChoices } from './choices.js';
import { conditionsOf } from './conditions-of.js';
import { rangeOf } from './range.js';
import { frameMass } from './rules/supply/frame-mass.js';
import { parts } from './testing/parts.js';

const weighing = (slot: SlotName, massKg: number): Item =>
  ({ ...parts[slot], id: `${slot} ${String(massKg)}`, massKg }) as Item;

const carrying = (maxMassKg: number): Item => ({ ...weighing('frame', maxMassKg), maxMassKg }) as Item;

const single = (Object.keys(parts) as SlotName[]).filter(
  (slot) => !['vessel', 'cover', 'frame'].includes(slot),
);
const items = [
  ...[3, 7.1, 12].map((massKg) => weighing('vessel', massKg)),
  ...[2.2, 6].map((massKg) => weighing('cover', massKg)),
  ...single.map((slot) => weighing(slot, 0.3)),
  ...[0, 40, 75, 110].map(carrying),
];
const bench = createBench(rangeOf({ revision: 'test', items }, { deliveryDays: () => 0 }), [frameMass]);

const systemWith = (arrangement: 'alternate' | 'parallel', counts: readonly number[]) =>
  systemSchema.parse({
    inquiry: {
      title: 'Frame of several sets',
      arrangement,
      process: { density: '1000 kg/m3' },
      sets: counts.map((count, set) => ({ count, batchVolume: `${String(1 + 4 * set)} L` })),
    },
    sets: counts.map((count) => ({ count, choices: {} })),
  });

const product = <T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] =>
  lists.reduce<readonly (readonly T[])[]>(
    (rows, list) => rows.flatMap((row) => list.map((x) => [...row, x])),
    [[]],
  );

describe.each([
  { arrangement: 'parallel', counts: [2, 3] },
  { arrangement: 'parallel', counts: [6] },
  { arrangement: 'alternate', counts: [2, 3] },
] as const)('masses of $counts vessels, $arrangement', ({ arrangement, counts }) => {
  it('are summed by the engine as by the plain rule, over every combination', () => {
    const system = systemWith(arrangement, counts);
    const { variables, engine } = compileFor(system, bench);
    const conditions = counts.map((_, set) => conditionsOf(system, set));
    const concerned = variables.filter((v) => ['frame', ...frameMass.terms].includes(v.slot));
    const holds = product(concerned.map((v) => v.options)).filter((chosen) =>
      counts.every((_, set) => {
        const all = counts.map((count, k) => ({
          set: k,
          count,
          conditions: conditions[k]!,
          chosen: (slot: SlotName) =>
            chosen[concerned.findIndex((v) => v.slot === slot && (v.set ?? k) === k)],
        }));
        const view = { ...all[set]!, all, withEvidence: false };
        return assessRule(frameMass, view).every(({ status }) => status !== 'not met');
      }),
    ).length;
    const total = concerned.reduce((n, v) => n * v.options.length, 1);
    expect(holds).toBeGreaterThan(0);
    expect(holds).toBeLessThan(total);
    const others = variables.filter((v) => !concerned.includes(v));
    const scale = others.reduce((n, v) => n * v.options.length, 1);
    const count = engine.count({ choices: engineChoices(system, variables) });
    expect(count.status === 'proved' ? Number(count.value) : undefined).toBe(holds * scale);
  });

  it('are tabulated anew when a count or the arrangement changes', () => {
    const countOf = (system: ReturnType<typeof systemWith>) => {
      const { variables, engine } = compileFor(system, bench);
      const count = engine.count({ choices: engineChoices(system, variables) });
      return count.status === 'proved' ? Number(count.value) : undefined;
    };
    const before = countOf(systemWith(arrangement, counts));
    const more = countOf(
      systemWith(
        arrangement,
        counts.map((count) => count + 1),
      ),
    );
    const other = countOf(systemWith(arrangement === 'alternate' ? 'parallel' : 'alternate', counts));
    expect(more).toBeLessThan(before!);
    if (counts.length > 1) expect(other).not.toBe(before);
    expect(countOf(systemWith(arrangement, counts))).toBe(before);
  });
});
