import type { Item, SlotName } from '@flangewise/model';
import type { Rounding } from './rule.js';

/** Options of a slot merged by what a rule reads of them: options alike in that are one class to the rule. */
export interface Classes {
  /** Class of each option. */
  readonly classOf: Uint16Array;
  /** One option of each class. */
  readonly representatives: readonly (Item | null)[];
}

const readOf = (option: Item, attribute: string, { massKg }: Rounding): unknown =>
  attribute === 'massKg' && massKg !== undefined
    ? massKg(option.massKg)
    : ((option as Record<string, unknown>)[attribute] ?? null);

type Options = readonly (Item | null)[];

const merge = (options: Options, read: readonly string[], rounded: Rounding): Classes => {
  const known = new Map<string, number>();
  const representatives: (Item | null)[] = [];
  const classOf = Uint16Array.from(options, (option) => {
    const key = option === null ? 'none' : JSON.stringify(read.map((a) => readOf(option, a, rounded)));
    const found = known.get(key);
    if (found !== undefined) return found;
    known.set(key, representatives.length);
    representatives.push(option);
    return representatives.length - 1;
  });
  return { classOf, representatives };
};

const exact = {};
const merged = new WeakMap<Options, WeakMap<object, Map<string, Classes>>>();

/** What was merged of these options, by attributes, under one rounding. */
const mergedOf = (options: Options, { massKg }: Rounding): Map<string, Classes> => {
  const rounding = massKg ?? exact;
  const byRounding = merged.get(options) ?? new WeakMap<object, Map<string, Classes>>();
  merged.set(options, byRounding);
  const byAttributes = byRounding.get(rounding) ?? new Map<string, Classes>();
  byRounding.set(rounding, byAttributes);
  return byAttributes;
};

/**
 * Merges options by the attributes that a rule reads, once: conditions change nothing of it. Names are left out on
 * purpose: they serve the text of a result, and there the chosen item itself is passed.
 */
export const classesOf = (
  options: Options,
  attributes: readonly string[],
  rounded: Rounding = {},
): Classes => {
  const read = attributes.filter((a) => a !== 'name');
  const known = mergedOf(options, rounded);
  const key = read.join();
  const classes = known.get(key) ?? merge(options, read, rounded);
  known.set(key, classes);
  return classes;
};

/**
 * All combinations of class representatives, row-major (last slot fastest). Every visit is given the same object, which
 * holds the combination of the moment: it is not to be kept.
 */
export const forEachTuple = (
  scope: readonly { readonly slot: SlotName; readonly classes: Classes }[],
  visit: (parts: Record<string, Item | null>, index: number) => void,
): void => {
  const places = scope.map(({ slot, classes: { representatives } }) => ({ slot, representatives, at: 0 }));
  const total = places.reduce((product, { representatives }) => product * representatives.length, 1);
  const parts: Record<string, Item | null> = {};
  for (const { slot, representatives } of places) parts[slot] = representatives[0] ?? null;
  for (let index = 0; index < total; index++) {
    visit(parts, index);
    for (let k = places.length - 1; k >= 0; k--) {
      const place = places[k];
      if (place === undefined) break;
      place.at = place.at + 1 < place.representatives.length ? place.at + 1 : 0;
      parts[place.slot] = place.representatives[place.at] ?? null;
      if (place.at > 0) break;
    }
  }
};
