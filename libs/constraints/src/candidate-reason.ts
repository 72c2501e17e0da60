import type { Item, ItemOf, SlotName } from '@flangewise/model';
import { sentenceCase } from './sentence-case.js';

/** What tells one candidate from the others. */
export interface Compared {
  readonly items: readonly Item[];
  readonly cost: number;
  readonly days: number;
  readonly leastMargin: number;
}

const partsIn = <S extends SlotName>(items: readonly Item[], slot: S): readonly ItemOf<S>[] =>
  items.filter((item): item is ItemOf<S> => item.slot === slot);

const vesselText = (one: readonly Item[], first: readonly Item[]): string | undefined => {
  const texts = partsIn(one, 'vessel').flatMap((vessel, k) => {
    const other = partsIn(first, 'vessel')[k];
    if (other === undefined || other.id === vessel.id) return [];
    const size = vessel.nominalVolumeL === other.nominalVolumeL ? [] : [`${String(vessel.nominalVolumeL)} L`];
    const material = vessel.material === other.material ? [] : [`in ${vessel.material}`];
    const family = vessel.family === other.family ? [] : [`of family ${vessel.family}`];
    const jacket =
      (vessel.jacket === null) === (other.jacket === null)
        ? []
        : [vessel.jacket === null ? 'without jacket' : 'jacketed'];
    const rating =
      size.length + material.length + family.length + jacket.length > 0 ? [] : [`as ${vessel.name}`];
    return [[...size, ...material, ...family, ...jacket, ...rating].join(' ')];
  });
  return texts.length === 0 ? undefined : `Vessel ${texts.join(' and ')}`;
};

const closureText = (one: readonly Item[], first: readonly Item[]): string | undefined => {
  const [closure] = partsIn(one, 'closure');
  const [other] = partsIn(first, 'closure');
  if (closure === undefined || closure.kind === other?.kind) return undefined;
  const minutes = String(Math.ceil(closure.openingTimeS / 60));
  return `${closure.kind === 'bolted' ? 'bolted' : `quick-acting ${closure.kind}`}, opened in ${minutes} min`;
};

const superlativeOf = (all: readonly Compared[], one: Compared): string | undefined => {
  const others = all.filter((r) => r !== one);
  if (others.length === 0) return undefined;
  if (others.every((r) => r.cost > one.cost)) return 'cheapest';
  if (others.every((r) => r.days > one.days)) return 'soonest';
  if (others.every((r) => r.leastMargin < one.leastMargin)) return 'largest least margin';
  return undefined;
};

const sentence = (text: string): string => `${sentenceCase(text)}.`;

/** Why one would take this candidate: what it is best at, and how it differs from the first. */
export const reasonOf = (all: readonly Compared[], one: Compared): string => {
  const [first] = all;
  const best = superlativeOf(all, one);
  if (first === undefined || first === one)
    return sentence(best ?? (all.length === 1 ? 'the only one that fits' : 'first of those that fit'));
  const differences = [vesselText(one.items, first.items), closureText(one.items, first.items)].filter(
    (t) => t !== undefined,
  );
  const text = differences.length === 0 ? 'another way of the same parts' : differences.join(', ');
  return sentence(best === undefined ? text : `${text}; ${best}`);
};
