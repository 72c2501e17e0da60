import { liquidDensity, liquidHeatCapacity, solutionDensity, vapourPressure } from '@flangewise/engineering';
import type { ConditionMedium } from './conditions.js';
import { type Proof, reckon } from './figure.js';

/** Where nobody said at what temperature the vessel is filled. */
export const usualFillTemperatureK = 293.15;

const water = '7732-18-5';

const liquidRoles: readonly ConditionMedium['role'][] = ['solvent', 'reactant', 'product'];

/** The liquid that decides density and vapour pressure: the solvent, else the first known liquid. */
export const mainLiquid = (media: readonly ConditionMedium[]): ConditionMedium | undefined =>
  media.find((m) => m.role === 'solvent') ??
  media.find((m) => liquidRoles.includes(m.role) && m.cas !== undefined);

/** A share below 1 of something that stands in the table of aqueous solutions is a solution in water. */
const isSolution = (medium: ConditionMedium): boolean =>
  medium.massFraction !== undefined && medium.massFraction < 1;

/** Density [kg/m³] of the liquid; undefined where the tables have none at this temperature. */
export const densityAt = (
  medium: ConditionMedium,
  temperatureK: number,
  proof?: Proof,
): number | undefined => {
  const key = medium.cas ?? medium.name;
  if (isSolution(medium)) {
    const outcome = reckon(
      solutionDensity,
      { solute: key, massFraction: medium.massFraction ?? 0, temperatureK },
      proof,
    );
    if (outcome.ok) return outcome.value.densityKgPerM3;
    // Beyond the table of solutions water expands alike; the ratio of densities is what counts here.
    const asWater = reckon(liquidDensity, { substance: water, temperatureK }, proof);
    return asWater.ok ? asWater.value.densityKgPerM3 : undefined;
  }
  const outcome = reckon(liquidDensity, { substance: key, temperatureK }, proof);
  return outcome.ok ? outcome.value.densityKgPerM3 : undefined;
};

/** Vapour pressure [Pa absolute]; of an aqueous solution that of water, its upper bound for dissolved salts and bases. */
export const vapourPressureAt = (
  medium: ConditionMedium,
  temperatureK: number,
  proof?: Proof,
): number | undefined => {
  const substance = isSolution(medium) ? water : (medium.cas ?? medium.name);
  const outcome = reckon(vapourPressure, { substance, temperatureK }, proof);
  return outcome.ok ? outcome.value.pressurePaAbs : undefined;
};

export const heatCapacityAt = (medium: ConditionMedium, temperatureK: number): number | undefined => {
  const substance = isSolution(medium) ? water : (medium.cas ?? medium.name);
  const outcome = reckon(liquidHeatCapacity, { substance, temperatureK });
  return outcome.ok ? outcome.value.heatCapacityJPerKgK : undefined;
};
