import { ambientLoss, heatUp } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { type Proof, reckon } from '../../figure.js';
import { fillTemperatureK } from '../../liquid.js';
import { jacketedReads, jacketLowerCoefficient, wettedJacketM2 } from './lower-coefficients.js';

export const heatingReads = {
  vessel: [...jacketedReads, 'massKg', 'depthM', 'bore'],
  heater: ['powerW', 'bore', 'maxWallTemperatureK'],
  circulator: ['heatingPowerW', 'maxTemperatureK'],
} as const;

export interface HeatingParts {
  readonly vessel: Pick<ItemOf<'vessel'>, (typeof heatingReads.vessel)[number]>;
  readonly heater: Pick<ItemOf<'heater'>, 'powerW' | 'bore' | 'maxWallTemperatureK'> | null;
  readonly circulator: Pick<ItemOf<'circulator'>, 'heatingPowerW' | 'maxTemperatureK'> | null;
}

export const heatingConditions = [
  'batchVolumeM3',
  'densityKgPerM3',
  'heatCapacityJPerKgK',
  'temperatureMinK',
  'temperatureMaxK',
  'media',
  'viscosityMaxPaS',
] as const;

export type HeatingConditions = Pick<Conditions, (typeof heatingConditions)[number]>;

const heatCapacities = { glass: 830, metal: 500 } as const;
/** Insulation of vessel and jacket [m], and how far the jacket runs above the end of the heating [K] (common practice). */
const insulationM = 0.03;
const jacketAboveBatchK = 50;

/** How hot the medium of a jacket is let run to heat a batch to its end, as far as the circulator goes. */
export const jacketMediumK = (
  circulator: Pick<ItemOf<'circulator'>, 'maxTemperatureK'>,
  endK: number,
): number => Math.min(circulator.maxTemperatureK, endK + jacketAboveBatchK);

export type HeatUp =
  | { readonly kind: 'time'; readonly timeS: number; readonly limitedBy: string }
  | { readonly kind: 'never'; readonly because: string }
  | { readonly kind: 'missing'; readonly fields: readonly string[] }
  | { readonly kind: 'no heating' };

const lossWPerK = ({ vessel }: HeatingParts, endK: number, proof: Proof | undefined): number => {
  const { innerDiameterM, wallThicknessM } = vessel.geometry;
  const across = innerDiameterM + 2 * wallThicknessM + 2 * (vessel.jacket?.gapM ?? 0);
  const loss = reckon(
    ambientLoss,
    {
      surfaceAreaM2: Math.PI * across * vessel.depthM + (Math.PI / 2) * across ** 2,
      innerTemperatureK: endK,
      insulationThicknessM: insulationM,
    },
    proof,
  );
  return loss.ok ? loss.value.lossWPerK : 0;
};

const sourceOf = (
  { vessel, heater, circulator }: HeatingParts,
  conditions: HeatingConditions & { readonly endK: number },
  proof: Proof | undefined,
) => {
  if (vessel.jacket === null) {
    return heater === null || heater.bore !== vessel.bore ? undefined : { heaterPowerW: heater.powerW };
  }
  if (circulator === null) return undefined;
  const overallCoefficientWPerM2K = jacketLowerCoefficient(vessel, conditions, proof);
  return overallCoefficientWPerM2K === undefined
    ? undefined
    : {
        heaterPowerW: circulator.heatingPowerW,
        overallCoefficientWPerM2K,
        areaM2: wettedJacketM2(vessel, conditions.batchVolumeM3),
        mediumTemperatureK: jacketMediumK(circulator, conditions.endK),
      };
};

/** Time from the lowest to the highest temperature, vessel and batch together, by mantle or by jacket. */
export const heatUpTime = (parts: HeatingParts, conditions: HeatingConditions, proof?: Proof): HeatUp => {
  const { batchVolumeM3, densityKgPerM3, heatCapacityJPerKgK, temperatureMinK, temperatureMaxK } = conditions;
  const startK = fillTemperatureK(temperatureMinK);
  if (temperatureMaxK !== undefined && temperatureMaxK <= startK) return { kind: 'no heating' };
  if (parts.vessel.jacket === null ? parts.heater === null : parts.circulator === null)
    return { kind: 'no heating' };
  const fields = [
    ...(batchVolumeM3 === undefined ? ['sets.batchVolume'] : []),
    ...(temperatureMaxK === undefined ? ['process.temperature.highest'] : []),
    ...(densityKgPerM3 === undefined || heatCapacityJPerKgK === undefined
      ? ['density and heat capacity of the batch']
      : []),
  ];
  if (
    batchVolumeM3 === undefined ||
    temperatureMaxK === undefined ||
    densityKgPerM3 === undefined ||
    heatCapacityJPerKgK === undefined
  )
    return { kind: 'missing', fields };
  const source = sourceOf(parts, { ...conditions, endK: temperatureMaxK }, proof);
  if (source === undefined) return { kind: 'no heating' };
  const time = reckon(
    heatUp,
    {
      batchMassKg: batchVolumeM3 * densityKgPerM3,
      heatCapacityJPerKgK,
      vesselMassKg: parts.vessel.massKg,
      vesselHeatCapacityJPerKgK:
        parts.vessel.construction === 'glass' ? heatCapacities.glass : heatCapacities.metal,
      startTemperatureK: startK,
      endTemperatureK: temperatureMaxK,
      lossWPerK: lossWPerK(parts, temperatureMaxK, proof),
      ...source,
    },
    proof,
  );
  return time.ok
    ? { kind: 'time', timeS: time.value.timeS, limitedBy: time.value.limitedBy }
    : { kind: 'never', because: time.error.message };
};
