import { demoCatalogue } from '@flangewise/catalogue';
import {
  type Item,
  type ItemOf,
  setSlots,
  type SlotName,
  slots,
  type System,
  systemSchema,
} from '@flangewise/model';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from './assess.js';
import { compileFor, createBench } from './bench.js';
import { engineChoices } from './choices.js';
import type { Chosen } from './chosen.js';
import { narrow } from './narrow.js';
import { rangeOf } from './range.js';
import { coverPorts } from './rules/accessories/ports.js';
import { instead, lackText, setPortsOf } from './set-ports.js';

const slotsOfRule: readonly SlotName[] = [
  ...new Set<SlotName>(['cover', ...coverPorts.users, ...coverPorts.obstacles.map(({ slot }) => slot)]),
];

/** Parts of one bore, so that what stands below is in the way of what reaches down. */
const bore = 130;
const isNear = (item: Item): boolean =>
  ('bore' in item ? item.bore === bore : true) &&
  (item.slot !== 'stirrer' || (item.diameterM > 0.05 && item.diameterM < 0.13)) &&
  item.portsM.every((size) => size <= 0.025);
const near = new Map(
  slotsOfRule.map((slot) => [slot, demoCatalogue.items.filter((item) => item.slot === slot && isNear(item))]),
);

const benchFor = (items: readonly Item[]) =>
  createBench(rangeOf({ revision: 'test', items: [...items] }, { deliveryDays: () => 0 }), [coverPorts]);

const systemOf = (choices: Partial<Record<SlotName, string | null>>, freePorts?: number): System =>
  systemSchema.parse({
    inquiry: {
      title: 'Ports',
      sets: [{}],
      ...(freePorts === undefined ? {} : { requirements: { freePorts: { count: freePorts } } }),
    },
    sets: [{ choices }],
  });

const product = <T>(lists: readonly (readonly T[])[]): readonly (readonly T[])[] =>
  lists.reduce<readonly (readonly T[])[]>(
    (rows, list) => rows.flatMap((row) => list.map((x) => [...row, x])),
    [[]],
  );

/** Two or three options of some slots; every other slot has one. */
const drawn = fc.record({
  open: fc.uniqueArray(fc.constantFrom(...slotsOfRule), { minLength: 3, maxLength: 4 }),
  seed: fc.nat(),
  free: fc.option(fc.integer({ min: 1, max: 5 }), { nil: undefined }),
});

describe('ports over the range', () => {
  it('are narrowed and counted by the engine as the plain assignment says of every combination', () => {
    let refused = 0;
    let checked = 0;
    fc.assert(
      fc.property(drawn, ({ open, seed, free }) => {
        const pick = (slot: SlotName, k: number): Item | undefined => {
          const all = near.get(slot) ?? [];
          return all[(seed * 7 + k * 131 + slot.length * 17) % Math.max(1, all.length)];
        };
        const optionsOf = (slot: SlotName): readonly Item[] =>
          [...new Set(Array.from({ length: open.includes(slot) ? 3 : 1 }, (_, k) => pick(slot, k)))].filter(
            (item) => item !== undefined,
          );
        const others = setSlots
          .filter((slot) => !slotsOfRule.includes(slot))
          .flatMap((slot) => demoCatalogue.items.find((item) => item.slot === slot) ?? []);
        const frame = demoCatalogue.items.filter(
          (item, i, all) =>
            all.findIndex(({ slot }) => slot === item.slot) === i && !slotsOfRule.includes(item.slot),
        );
        const bench = benchFor([...new Set([...slotsOfRule.flatMap(optionsOf), ...others, ...frame])]);
        // Most of the other accessories are left out: a cover full of them refuses everything.
        const isEmpty = (slot: SlotName): boolean => slots[slot].optional && (seed + slot.length * 7) % 5 > 0;
        const closed = Object.fromEntries(
          slotsOfRule
            .filter((slot) => !open.includes(slot))
            .map((slot) => [slot, isEmpty(slot) ? null : (optionsOf(slot)[0]?.id ?? null)]),
        );
        const asked = systemOf(closed, free);
        const { variables, engine } = compileFor(asked, bench);
        const offered = (slot: SlotName) =>
          variables.find((v) => v.slot === slot)?.options.map((o) => o?.id ?? null) ?? [];
        const combinations = product(open.map(offered));
        const valid = combinations.filter((ids) => {
          const system = systemOf(
            { ...closed, ...Object.fromEntries(open.map((slot, k) => [slot, ids[k] ?? null])) },
            free,
          );
          return assess(system, bench).results.every(({ status }) => status !== 'not met');
        });
        refused += combinations.length - valid.length;
        checked += combinations.length;
        const narrowed = narrow(asked, bench);
        open.forEach((slot, k) => {
          const path = variables.find((v) => v.slot === slot)?.path ?? '';
          expect([...(narrowed.slots[path]?.valid ?? [])].sort(), path).toEqual(
            [...new Set(valid.map((ids) => ids[k] ?? null))].sort(),
          );
        });
        const rest = variables.reduce(
          (ways, v) =>
            open.includes(v.slot) || slotsOfRule.includes(v.slot) ? ways : ways * BigInt(v.options.length),
          1n,
        );
        const count = engine.count({ choices: engineChoices(asked, variables) });
        expect(count.status === 'proved' ? count.value : undefined).toBe(BigInt(valid.length) * rest);
      }),
      { numRuns: 60, seed: 11 },
    );
    expect(refused).toBeGreaterThan(checked / 20);
    expect(refused).toBeLessThan(checked);
  }, 120_000);
});

describe('a cover without enough ports', () => {
  const covers = demoCatalogue.items.filter((item): item is ItemOf<'cover'> => item.slot === 'cover');
  const ofSlot = (slot: SlotName, size: number): Item | undefined =>
    demoCatalogue.items.find((item) => item.slot === slot && item.portsM[0] === size);

  it('names covers of the range that would do, and they do', () => {
    let named = 0;
    for (const cover of covers.filter((one) => one.bore === bore)) {
      const chosen: Chosen = (slot) =>
        slot === 'cover'
          ? cover
          : slot === 'sightGlass'
            ? (ofSlot('sightGlass', 0.025) ?? null)
            : slot === 'charging'
              ? (ofSlot('charging', 0.02) ?? null)
              : null;
      const ports = setPortsOf(coverPorts, chosen);
      if (ports === undefined || ports.assignment.unplaced.length === 0) continue;
      expect(lackText(coverPorts, ports)).toMatch(/has no port left for .+: .+\./u);
      const text = instead(coverPorts, ports, demoCatalogue.items);
      for (const [, id] of text.matchAll(/(CV-\d+)/gu)) {
        named++;
        const other = covers.find((one) => one.id === id);
        const there = setPortsOf(coverPorts, (slot) => (slot === 'cover' ? other : chosen(slot)));
        expect(there?.assignment.unplaced, text).toEqual([]);
      }
    }
    expect(named).toBeGreaterThan(0);
  });
});
