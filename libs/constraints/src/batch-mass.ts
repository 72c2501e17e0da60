import type { Conditions } from './conditions.js';
import { type Figure, known, missing, unverified } from './figure.js';

/** Where nobody knows the liquid: heavier than water and usual solvents, the careful side (common practice) [kg/m³]. */
export const assumedDensityKgPerM3 = 1500;

export const densityAssumed = `Density is not known; ${String(assumedDensityKgPerM3)} kg/m³ was taken.`;

export const batchConditions = ['media', 'batchVolumeM3', 'densityKgPerM3'] as const;

/** Mass of the batch in one vessel [kg]; where nothing but gases is charged there is none. */
export const batchMass = ({
  media,
  batchVolumeM3,
  densityKgPerM3,
}: Pick<Conditions, (typeof batchConditions)[number]>): Figure => {
  if (batchVolumeM3 === undefined) {
    const onlyGas = media.length > 0 && media.every((m) => m.role === 'gas' || m.role === 'inert gas');
    return onlyGas ? known(0) : missing('sets.batchVolume');
  }
  return densityKgPerM3 === undefined
    ? unverified(batchVolumeM3 * assumedDensityKgPerM3, densityAssumed)
    : known(batchVolumeM3 * densityKgPerM3);
};
