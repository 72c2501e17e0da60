import type { System } from '@flangewise/model';

const inFirstSet = (system: System, choices: System['sets'][number]['choices']): System => ({
  ...system,
  sets: system.sets.map((set, k) => (k === 0 ? { ...set, choices } : set)),
});

/** The same system with another choice open each time, as an engineer edits. */
export const reopened = (system: System, run: number): System => {
  const choices = system.sets[0]?.choices ?? {};
  const slots = Object.keys(choices);
  const open = slots[Math.abs(run) % slots.length] ?? 'stirrer';
  return inFirstSet(system, { ...choices, [open]: undefined });
};

/** The same system with so many of its choices made, in the order of the slots. */
export const begun = (system: System, made: number): System =>
  inFirstSet(system, Object.fromEntries(Object.entries(system.sets[0]?.choices ?? {}).slice(0, made)));
