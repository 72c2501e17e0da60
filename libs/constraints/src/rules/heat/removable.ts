import { removableHeat } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { type Proof, reckon } from '../../figure.js';
import { once } from '../../once.js';
import {
  coilLowerCoefficient,
  jacketedReads,
  jacketLowerCoefficient,
  wettedJacketM2,
} from './lower-coefficients.js';

export const coolerReads = {
  coil: ['areaM2', 'tubeDiameterM'],
  vessel: jacketedReads,
  circulator: ['coolingPowerW', 'minTemperatureK', 'flowM3PerS'],
} as const;

export interface CoolerParts {
  readonly coil: Pick<ItemOf<'coil'>, 'areaM2' | 'tubeDiameterM'> | null;
  readonly vessel: Pick<ItemOf<'vessel'>, (typeof jacketedReads)[number]>;
  readonly circulator: Pick<ItemOf<'circulator'>, 'coolingPowerW' | 'minTemperatureK' | 'flowM3PerS'> | null;
}

export const coolerConditions = [
  'temperatureUsualK',
  'temperatureMaxK',
  'batchVolumeM3',
  'media',
  'viscosityMaxPaS',
] as const;

export type CoolerConditions = Pick<Conditions, (typeof coolerConditions)[number]>;

/** Tap water in summer, driven by the mains at 2.5 m/s through a tube with a wall of 1 mm (common practice). */
export const tapWater = {
  inletK: 293.15,
  velocityMPerS: 2.5,
  densityKgPerM3: 998,
  heatCapacityJPerKgK: 4180,
  tubeWallM: 0.001,
} as const;

/** Oils of the range at their lowest; half of the free flow of the pump reaches the jacket (common practice). */
const oil = { densityKgPerM3: 720, heatCapacityJPerKgK: 1750, flowShare: 0.5 } as const;

/** A jacket is not run colder than this below the batch [K] (common practice). */
const coldestBelowBatchK = 60;

export const waterFlowKgPerS = (tubeDiameterM: number): number =>
  tapWater.densityKgPerM3 *
  tapWater.velocityMPerS *
  (Math.PI / 4) *
  Math.max(0.001, tubeDiameterM - 2 * tapWater.tubeWallM) ** 2;

/** Heat that a coil on tap water takes away [W]. */
export const removedByCoil = (
  coil: NonNullable<CoolerParts['coil']>,
  batch: { readonly temperatureK: number; readonly coefficientWPerM2K: number },
  proof: Proof | undefined,
): number => {
  if (batch.temperatureK <= tapWater.inletK) return 0;
  const removed = reckon(
    removableHeat,
    {
      lowerCoefficientWPerM2K: batch.coefficientWPerM2K,
      areaM2: coil.areaM2,
      batchTemperatureK: batch.temperatureK,
      mediumInletTemperatureK: tapWater.inletK,
      mediumFlowKgPerS: waterFlowKgPerS(coil.tubeDiameterM),
      mediumHeatCapacityJPerKgK: tapWater.heatCapacityJPerKgK,
      mediumIsWater: true,
    },
    proof,
  );
  return removed.ok ? removed.value.removableW : 0;
};

type PowerTable = ItemOf<'circulator'>['coolingPowerW'];

/** Cooling power between the points of its table; none below the first, that of the last above it [W]. */
export const coolingPowerAt = (table: PowerTable, temperatureK: number): number => {
  const points = [...table].sort((a, b) => a.temperatureK - b.temperatureK);
  const above = points.findIndex((p) => p.temperatureK >= temperatureK);
  const [left, right] = [points[above - 1], points[above]];
  if (right === undefined) return points.at(-1)?.powerW ?? 0;
  if (left === undefined) return right.temperatureK === temperatureK ? right.powerW : 0;
  const share = (temperatureK - left.temperatureK) / (right.temperatureK - left.temperatureK);
  return left.powerW + share * (right.powerW - left.powerW);
};

interface JacketDuty {
  readonly areaM2: number;
  readonly batchK: number;
  readonly coefficientWPerM2K: number;
  readonly flowKgPerS: number;
}

/** The jacket temperature at which transfer and cooling power together give most: among the points of the table. */
const bestInletK = (circulator: NonNullable<CoolerParts['circulator']>, duty: JacketDuty): number => {
  const { areaM2, batchK, coefficientWPerM2K, flowKgPerS } = duty;
  const coldest = Math.max(circulator.minTemperatureK, batchK - coldestBelowBatchK);
  const capacity = flowKgPerS * oil.heatCapacityJPerKgK;
  const taken = (inletK: number): number =>
    Math.min(
      -Math.expm1((-coefficientWPerM2K * areaM2) / capacity) * capacity * (batchK - inletK),
      coolingPowerAt(circulator.coolingPowerW, inletK),
    );
  return circulator.coolingPowerW
    .map((p) => p.temperatureK)
    .filter((t) => t > coldest && t < batchK)
    .reduce((best, t) => (taken(t) > taken(best) ? t : best), coldest);
};

/** Heat that a jacket on a circulator takes away [W]. */
export const removedByJacket = (
  circulator: NonNullable<CoolerParts['circulator']>,
  given: { readonly areaM2: number; readonly batchK: number; readonly coefficientWPerM2K: number },
  proof: Proof | undefined,
): number => {
  if (given.areaM2 <= 0 || given.batchK <= circulator.minTemperatureK) return 0;
  const flowKgPerS = circulator.flowM3PerS * oil.flowShare * oil.densityKgPerM3;
  const inletK = bestInletK(circulator, { ...given, flowKgPerS });
  const coolingPowerW = coolingPowerAt(circulator.coolingPowerW, inletK);
  if (coolingPowerW <= 0 || flowKgPerS <= 0) return 0;
  const removed = reckon(
    removableHeat,
    {
      lowerCoefficientWPerM2K: given.coefficientWPerM2K,
      areaM2: given.areaM2,
      batchTemperatureK: given.batchK,
      mediumInletTemperatureK: inletK,
      mediumFlowKgPerS: flowKgPerS,
      mediumHeatCapacityJPerKgK: oil.heatCapacityJPerKgK,
      coolingPowerW,
    },
    proof,
  );
  return removed.ok ? removed.value.removableW : 0;
};

const batchTemperatureK = (conditions: CoolerConditions): number | undefined =>
  conditions.temperatureUsualK ?? conditions.temperatureMaxK;

type Coil = NonNullable<CoolerParts['coil']>;

/** What the coil takes away at the usual temperature [W]. */
const coilShareW = (coil: Coil, conditions: CoolerConditions, proof?: Proof): number => {
  const temperatureK = batchTemperatureK(conditions);
  if (temperatureK === undefined) return 0;
  const coefficientWPerM2K = coilLowerCoefficient(conditions, proof);
  return removedByCoil(coil, { temperatureK, coefficientWPerM2K }, proof);
};

const coilShareOnce = once((coil: Coil, conditions: CoolerConditions) => coilShareW(coil, conditions));

interface Jacketed {
  readonly vessel: CoolerParts['vessel'];
  readonly circulator: NonNullable<CoolerParts['circulator']>;
}

/** What the jacket takes away [W]; nothing where its coefficient is not known. */
const jacketShareW = (
  { vessel, circulator }: Jacketed,
  conditions: CoolerConditions,
  proof?: Proof,
): number => {
  const batchK = batchTemperatureK(conditions);
  const coefficientWPerM2K = jacketLowerCoefficient(vessel, conditions, proof);
  if (batchK === undefined || coefficientWPerM2K === undefined) return 0;
  const areaM2 = wettedJacketM2(vessel, conditions.batchVolumeM3);
  return removedByJacket(circulator, { areaM2, batchK, coefficientWPerM2K }, proof);
};

const jacketShareOnce = once(
  (vessel: Jacketed['vessel'], circulator: Jacketed['circulator'], conditions: CoolerConditions) =>
    jacketShareW({ vessel, circulator }, conditions),
);

/** Heat that coil and jacket take away together at the usual temperature, by the lower ends of usual coefficients [W]. */
export const removableW = (
  { coil, vessel, circulator }: CoolerParts,
  conditions: CoolerConditions,
  proof?: Proof,
): number | undefined => {
  if (batchTemperatureK(conditions) === undefined) return undefined;
  const byCoil =
    coil === null
      ? 0
      : proof === undefined
        ? coilShareOnce(coil, conditions)
        : coilShareW(coil, conditions, proof);
  if (vessel.jacket === null || circulator === null) return byCoil;
  return (
    byCoil +
    (proof === undefined
      ? jacketShareOnce(vessel, circulator, conditions)
      : jacketShareW({ vessel, circulator }, conditions, proof))
  );
};
