import { requiredMarkingFor } from '@flangewise/engineering';
import type { ConditionMedium, Conditions } from './conditions.js';

const gasZones = ['0', '1', '2'] as const;

/**
 * What equipment at the vessel has to be marked with, from the zone and everything that can be in it. Undefined where
 * no gas zone was said, or where no substance has ignition data; then the marking is an open question.
 */
export const requiredMarking = (
  zone: string | undefined,
  media: readonly ConditionMedium[],
  zoneGas: string | undefined,
): Conditions['marking'] => {
  const gasZone = gasZones.find((z) => z === zone);
  if (gasZone === undefined) return undefined;
  const substances = [...media.flatMap((m) => m.cas ?? []), ...(zoneGas === undefined ? [] : [zoneGas])];
  if (substances.length === 0) return undefined;
  const marking = requiredMarkingFor(gasZone, substances);
  if (!marking.ok) return undefined;
  const { category, gasGroup, temperatureClass, limitingSubstance, surfaceLimitK } = marking.value;
  return { category, gasGroup, temperatureClass, from: limitingSubstance, surfaceLimitK };
};
