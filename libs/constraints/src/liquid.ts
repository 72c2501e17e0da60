import { fluidProperties, hotVolume, vapourPressure } from '@flangewise/engineering';
import type { ConditionMedium } from './conditions.js';
import { type Proof, reckon } from './figure.js';
import { volatilityOf } from './solution-volatility.js';

const roomK = 293.15;

/** A vessel is filled at room temperature, or colder where the process starts colder: the careful side for expansion. */
export const fillTemperatureK = (temperatureMinK: number | undefined): number =>
  Math.min(temperatureMinK ?? roomK, roomK);

const water = '7732-18-5';

const liquidRoles: readonly ConditionMedium['role'][] = ['solvent', 'reactant', 'product'];

/** The liquid that decides density and vapour pressure: the solvent, else the first known liquid. */
export const mainLiquid = (media: readonly ConditionMedium[]): ConditionMedium | undefined =>
  media.find((m) => m.role === 'solvent') ??
  media.find((m) => liquidRoles.includes(m.role) && m.cas !== undefined);

/** A share below 1 of something that stands in the table of aqueous solutions is a solution in water. */
const isSolution = (medium: ConditionMedium): boolean =>
  medium.massFraction !== undefined && medium.massFraction < 1;

const asLiquid = (medium: ConditionMedium) => ({
  substance: medium.cas ?? medium.name,
  ...(isSolution(medium) ? { massFraction: medium.massFraction } : {}),
});

type LiquidProperties = Extract<ReturnType<typeof reckonProperties>, { ok: true }>['value'];

const reckonProperties = (
  liquid: ReturnType<typeof asLiquid>,
  at: { temperatureK: number; proof?: Proof | undefined },
) => reckon(fluidProperties, { ...liquid, temperatureK: at.temperatureK }, at.proof);

/** What the tables know of the liquid at a temperature; a solution that they do not hold counts as water. */
export const propertiesAt = (
  medium: ConditionMedium,
  temperatureK: number,
  proof?: Proof,
): LiquidProperties | undefined => {
  const outcome = reckonProperties(asLiquid(medium), { temperatureK, proof });
  if (outcome.ok) return outcome.value;
  const asWater = isSolution(medium)
    ? reckonProperties({ substance: water }, { temperatureK, proof })
    : outcome;
  return asWater.ok ? asWater.value : undefined;
};

export interface HotVolume {
  readonly volumeM3: number;
  /** The expansion rests on an estimate or on a value from memory. */
  readonly estimated: boolean;
}

/** Volume of a batch at its highest temperature; undefined where the tables do not hold its expansion. */
export const hotVolumeOf = (
  medium: ConditionMedium,
  batch: { readonly volumeM3: number; readonly fillK: number; readonly hotK: number },
  proof?: Proof,
): HotVolume | undefined => {
  const given = {
    coldVolumeM3: batch.volumeM3,
    coldTemperatureK: Math.min(batch.fillK, batch.hotK),
    hotTemperatureK: batch.hotK,
  };
  const outcome = reckon(hotVolume, { ...asLiquid(medium), ...given }, proof);
  if (outcome.ok) {
    const { hotVolumeM3, estimated, fromMemory } = outcome.value;
    return { volumeM3: hotVolumeM3, estimated: estimated || fromMemory };
  }
  const asWater = isSolution(medium) ? reckon(hotVolume, { substance: water, ...given }, proof) : outcome;
  return asWater.ok ? { volumeM3: asWater.value.hotVolumeM3, estimated: true } : undefined;
};

const pureVapour = (substance: string, temperatureK: number, proof?: Proof): number | undefined => {
  const outcome = reckon(vapourPressure, { substance, temperatureK }, proof);
  return outcome.ok ? outcome.value.pressurePaAbs : undefined;
};

/** Vapour pressure [Pa absolute], of an aqueous solution its upper bound; undefined where the tables hold neither. */
export const vapourPressureAt = (
  medium: ConditionMedium,
  temperatureK: number,
  proof?: Proof,
): number | undefined => {
  const substance = medium.cas ?? medium.name;
  if (!isSolution(medium)) return pureVapour(substance, temperatureK, proof);
  const volatility = volatilityOf(medium);
  if (volatility === 'unknown') return undefined;
  const ofWater = pureVapour(water, temperatureK, proof);
  if (volatility === 'below water') return ofWater;
  const ofSubstance = pureVapour(substance, temperatureK, proof);
  return ofWater === undefined || ofSubstance === undefined ? undefined : ofWater + ofSubstance;
};

/** What the vapour pressure of a solution stands for, in words; undefined for a pure liquid. */
export const vapourBoundText = (medium: ConditionMedium): string | undefined => {
  if (!isSolution(medium)) return undefined;
  return volatilityOf(medium) === 'below water'
    ? 'water taken as the upper bound for the solution'
    : 'that of water and of the pure substance together, the upper bound for the solution';
};
