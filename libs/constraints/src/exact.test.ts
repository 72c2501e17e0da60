import { demoCatalogue } from '@flangewise/catalogue';
import { priceLists } from '@flangewise/catalogue/prices';
import {
  frameSlots,
  type InquiryInput,
  type Item,
  setSlots,
  type SlotName,
  type System,
  systemSchema,
} from '@flangewise/model';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import { compileFor, createBench } from './bench.js';
import { engineChoices } from './choices.js';
import { narrow } from './narrow.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';
import { solve } from './solve.js';

const prices = new Map(
  Object.entries(priceLists[0]?.prices ?? {}).map(([item, price]) => [item, Math.round(Number(price))]),
);
const benchFor = (items: readonly Item[]) =>
  createBench(rangeOf({ revision: 'test', items: [...items] }, { prices, deliveryDays: () => 0 }), ruleBook);
const whole = benchFor(demoCatalogue.items);

const inquiries: Readonly<Record<string, InquiryInput>> = {
  hydrogenation: {
    title: 'Hydrogenation in methanol',
    process: {
      media: [
        { substance: 'methanol', role: 'solvent' },
        { substance: 'hydrogen', role: 'gas' },
      ],
      pressure: { highest: '60 bar' },
      temperature: { lowest: '20 °C', highest: '150 °C' },
      viscosity: { start: '0.6 mPa·s' },
      stirringSpeed: { highest: '1000 rpm' },
      supplyPressure: '100 bar',
    },
    sets: [{ batchVolume: '1.5 L' }],
    site: { zone: '2', zoneGas: 'hydrogen' },
  },
  glass: {
    title: 'Heating in glass',
    process: {
      media: [{ substance: 'water', role: 'solvent' }],
      pressure: { highest: '2 bar' },
      temperature: { lowest: '5 °C', highest: '120 °C' },
    },
    sets: [{ batchVolume: '0.6 L', construction: 'glass' }],
  },
  pilot: {
    title: 'Pilot batch under vacuum',
    process: {
      media: [{ substance: 'toluene', role: 'solvent' }],
      pressure: { highest: '8 bar' },
      vacuum: true,
      temperature: { lowest: '10 °C', highest: '160 °C' },
    },
    sets: [{ batchVolume: '60 L' }],
    site: { zone: '1', ceilingHeight: '4 m' },
  },
};

/** A few slots of a whole system are open again, each with its own part and a few more of the range. */
interface Drawn {
  readonly open: readonly SlotName[];
  readonly others: number;
}

const drawn: fc.Arbitrary<Drawn> = fc.record({
  open: fc.uniqueArray(fc.constantFrom<SlotName>(...frameSlots, ...setSlots), { minLength: 2, maxLength: 4 }),
  others: fc.nat(),
});

type Chosen = Partial<Record<SlotName, string | null | undefined>>;

const slotsOf = (system: System): Chosen => ({
  ...system.frame,
  ...system.sets[0]?.choices,
});

const withChoices = (system: System, chosen: Chosen): System => {
  const of = (names: readonly SlotName[]) =>
    Object.fromEntries(names.flatMap((n) => (chosen[n] === undefined ? [] : [[n, chosen[n]]])));
  return {
    ...system,
    frame: of(frameSlots),
    sets: system.sets.map((set) => ({ ...set, choices: of(setSlots) })),
  };
};

/** Three options a slot: the part of the system, and two of the range that fall to it by the draw. */
const someOptions = (slot: SlotName, chosen: string | null | undefined, others: number): readonly Item[] => {
  const all = demoCatalogue.items.filter((item) => item.slot === slot);
  const picked = [1, 7].map((step) => all[(others + step) % all.length]);
  return [...new Set([all.find((item) => item.id === chosen), ...picked].filter((i) => i !== undefined))];
};

const product = <T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] =>
  lists.reduce<readonly (readonly T[])[]>(
    (rows, list) => rows.flatMap((row) => list.map((x) => [...row, x])),
    [[]],
  );

describe.each(Object.entries(inquiries))('%s', (_, inquiry) => {
  const answer = solve(inquiry, whole, { most: 1 });
  const base = systemSchema.parse(answer.candidates[0]?.system);
  const chosen = slotsOf(base);

  it('is narrowed, counted and priced as the plain rules do over every combination', () => {
    let refused = 0;
    fc.assert(
      fc.property(drawn, ({ open, others }) => {
        const items = [...frameSlots, ...setSlots].flatMap((slot) =>
          open.includes(slot)
            ? someOptions(slot, chosen[slot], others)
            : demoCatalogue.items.filter((item) => item.id === chosen[slot]),
        );
        const bench = benchFor(items);
        const asked = withChoices(
          base,
          Object.fromEntries(Object.entries(chosen).filter(([slot]) => !open.includes(slot as SlotName))),
        );
        const { variables, engine } = compileFor(asked, bench);
        const optionsOf = (slot: SlotName) =>
          variables.find((v) => v.slot === slot)?.options.map((o) => o?.id ?? null) ?? [];
        const combinations = product(open.map(optionsOf));
        const valid = combinations.filter((parts) => {
          const system = withChoices(base, {
            ...chosen,
            ...Object.fromEntries(open.map((s, k) => [s, parts[k]])),
          });
          return assess(system, bench).results.every((r) => r.kind !== 'hard' || r.status !== 'not met');
        });
        refused += combinations.length - valid.length;

        const narrowed = narrow(asked, bench);
        expect(narrowed.exact).toBe(true);
        open.forEach((slot, k) => {
          const path = variables.find((v) => v.slot === slot)?.path ?? '';
          expect([...(narrowed.slots[path]?.valid ?? [])].sort(), path).toEqual(
            [...new Set(valid.map((parts) => parts[k] ?? null))].sort(),
          );
        });

        const choices = engineChoices(asked, variables);
        const count = engine.count({ choices });
        expect(count.status === 'proved' ? Number(count.value) : undefined).toBe(valid.length);

        const fixed = Object.entries(chosen).filter(([slot]) => !open.includes(slot as SlotName));
        const priceOf = (ids: readonly (string | null | undefined)[]): number =>
          ids.reduce((sum, id) => sum + (typeof id === 'string' ? (prices.get(id) ?? 0) : 0), 0);
        const cheapest = Math.min(...valid.map((parts) => priceOf([...fixed.map(([, id]) => id), ...parts])));
        const best = engine.best({ choices, objective: { kind: 'cost' } });
        if (best.status !== 'proved') throw new Error('a range this small is always proved');
        expect(best.value === 'impossible' ? Number.POSITIVE_INFINITY : best.value.cost).toBe(cheapest);
      }),
      { numRuns: 12, seed: 7, endOnFailure: true },
    );
    expect(refused).toBeGreaterThan(0);
  }, 240_000);
});
