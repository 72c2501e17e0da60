import { requiredMarkingFor } from '@flangewise/engineering';
import type { ConditionMedium, Conditions } from './conditions.js';

const gasZones = ['0', '1', '2'] as const;

export interface Ignition {
  /** What equipment at the vessel has to be marked with; undefined where no gas zone was said, or nothing on file burns. */
  readonly marking: Conditions['marking'];
  /** Media that may burn and have no ignition data, by name. */
  readonly unknown: readonly string[];
}

/** What the zone asks for, from everything that can be in it; catalysts are solids and make no gas atmosphere. */
export const requiredMarking = (
  zone: string | undefined,
  media: readonly ConditionMedium[],
  zoneGas: string | undefined,
): Ignition => {
  const gasZone = gasZones.find((z) => z === zone);
  if (gasZone === undefined) return { marking: undefined, unknown: [] };
  const names = media.filter((m) => m.role !== 'catalyst').map((m) => m.cas ?? m.name);
  const substances = [...names, ...(zoneGas === undefined ? [] : [zoneGas])].map((substance) => ({
    substance,
    alone: requiredMarkingFor(gasZone, [substance]),
  }));
  const burning = substances.filter(({ alone }) => alone.ok).map(({ substance }) => substance);
  const unknown = substances
    .filter(({ alone }) => !alone.ok && alone.error.code === 'CALC_UNKNOWN_SUBSTANCE')
    .map(({ substance }) => media.find((m) => m.cas === substance)?.name ?? substance);
  const all = burning.length === 0 ? undefined : requiredMarkingFor(gasZone, burning);
  if (all?.ok !== true) return { marking: undefined, unknown };
  const { category, gasGroup, temperatureClass, limitingSubstance, surfaceLimitK } = all.value;
  return {
    marking: { category, gasGroup, temperatureClass, from: limitingSubstance, surfaceLimitK },
    unknown,
  };
};
