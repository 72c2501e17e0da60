import { findIgnitionData, findSubstanceHazards } from '@flangewise/engineering';
import type { ConditionMedium } from './conditions.js';

const toxicWhenInhaled = ['H330', 'H331'];
const oxidising = ['H270', 'H271', 'H272'];
const flammable = ['H220', 'H221', 'H224', 'H225', 'H226'];

const statementsOf = (medium: ConditionMedium) => {
  const found = findSubstanceHazards(medium.cas ?? medium.name);
  return found.ok ? found.value : undefined;
};

const carries = (medium: ConditionMedium, statements: readonly string[]): boolean =>
  statementsOf(medium)?.hazardStatements.some((h) => statements.some((s) => h.startsWith(s))) ?? false;

/** A gas that harms people who breathe it (H330, H331). */
export const isToxicGas = (medium: ConditionMedium): boolean =>
  statementsOf(medium)?.state === 'gas' && carries(medium, toxicWhenInhaled);

/** Gas or vapour that burns in air. */
export const isFlammable = (medium: ConditionMedium): boolean =>
  carries(medium, flammable) || findIgnitionData(medium.cas ?? medium.name).ok;

/** What feeds a fire: oxygen and other oxidisers, and air. */
export const isOxidiser = (medium: ConditionMedium): boolean =>
  carries(medium, oxidising) || medium.name.toLowerCase() === 'air';

export const isNamed = (medium: { readonly name: string }, name: string): boolean =>
  medium.name.toLowerCase() === name;
