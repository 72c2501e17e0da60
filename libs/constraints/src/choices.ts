import type { Choice } from '@flangewise/solver';
import { type Item, type SlotName, slots, type System, type SystemInput } from '@flangewise/model';
import type { SlotVariable } from './variable.js';

/** The item in a slot of a system: a number, null for none, undefined while nobody has chosen. */
export const choiceAt = (
  system: Pick<System, 'frame' | 'sets'>,
  variable: SlotVariable,
): string | null | undefined =>
  variable.set === undefined
    ? system.frame[variable.slot]
    : system.sets[variable.set]?.choices[variable.slot];

/** The position of an item among the options of a slot; −1 when the range has no such item there. */
export const optionIndex = (variable: SlotVariable, item: string | null): number =>
  variable.options.findIndex((option) => (option === null ? item === null : option.id === item));

/** The choices of a system in the engine's terms. Items that the range does not have are left out; see `unknownItems`. */
export const engineChoices = (system: System, variables: readonly SlotVariable[]): readonly Choice[] =>
  variables.flatMap((variable, index) => {
    const chosen = choiceAt(system, variable);
    if (chosen === undefined) return [];
    const value = optionIndex(variable, chosen);
    return value < 0 ? [] : [{ variable: index, value }];
  });

/** Choices that name an item which the range does not have, or has in another slot. */
export const unknownItems = (
  system: System,
  variables: readonly SlotVariable[],
): readonly { readonly path: string; readonly item: string }[] =>
  variables.flatMap((variable) => {
    const chosen = choiceAt(system, variable);
    return typeof chosen === 'string' && optionIndex(variable, chosen) < 0
      ? [{ path: variable.path, item: chosen }]
      : [];
  });

export const optionAt = (variable: SlotVariable, value: number): Item | null =>
  variable.options[value] ?? null;

const chosenId = (item: Item | null): string | null => item?.id ?? null;

/** A system document with every slot filled as a solution says. */
export const fillSystem = (
  base: SystemInput,
  variables: readonly SlotVariable[],
  solution: Int32Array,
): SystemInput => {
  const frame: Partial<Record<SlotName, string | null>> = {};
  const sets = (base.sets ?? []).map((set) => ({
    ...set,
    choices: {} as Partial<Record<SlotName, string | null>>,
  }));
  variables.forEach((variable, index) => {
    const id = chosenId(optionAt(variable, solution[index] ?? 0));
    if (slots[variable.slot].place === 'frame') frame[variable.slot] = id;
    else {
      const set = sets[variable.set ?? 0];
      if (set !== undefined) set.choices[variable.slot] = id;
    }
  });
  return { ...base, frame, sets };
};

/** The same system with every slot filled as a solution says. */
export const filledWith = (
  system: System,
  { variables, solution }: { readonly variables: readonly SlotVariable[]; readonly solution: Int32Array },
): System => {
  const chosen = (set: number | undefined) =>
    Object.fromEntries(
      variables.flatMap((variable, index): [SlotName, string | null][] =>
        variable.set === set ? [[variable.slot, chosenId(optionAt(variable, solution[index] ?? 0))]] : [],
      ),
    );
  return {
    ...system,
    frame: chosen(undefined),
    sets: system.sets.map((set, index) => ({ ...set, choices: chosen(index) })),
  };
};
