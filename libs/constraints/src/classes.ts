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

/**
 * Merges options by the attributes that a rule reads. Names are left out on purpose: they serve the text of a
 * result, and there the chosen item itself is passed.
 */
export const classesOf = (
  options: readonly (Item | null)[],
  attributes: readonly string[],
  rounded: Rounding = {},
): Classes => {
  const known = new Map<string, number>();
  const representatives: (Item | null)[] = [];
  const read = attributes.filter((a) => a !== 'name');
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

/** All combinations of class representatives, row-major (last slot fastest). */
export const forEachTuple = (
  scope: readonly { readonly slot: SlotName; readonly classes: Classes }[],
  visit: (parts: Record<string, Item | null>, index: number) => void,
): void => {
  const sizes = scope.map((s) => s.classes.representatives.length);
  const total = sizes.reduce((product, size) => product * size, 1);
  const at = new Array<number>(scope.length).fill(0);
  for (let index = 0; index < total; index++) {
    const parts: Record<string, Item | null> = {};
    scope.forEach((s, k) => {
      parts[s.slot] = s.classes.representatives[at[k] ?? 0] ?? null;
    });
    visit(parts, index);
    for (let k = scope.length - 1; k >= 0; k--) {
      const next = (at[k] ?? 0) + 1;
      if (next < (sizes[k] ?? 0)) {
        at[k] = next;
        break;
      }
      at[k] = 0;
    }
  }
};
