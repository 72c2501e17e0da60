import { batchTimeFlowingMedium, batchTimeIsothermal } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import { type Judgement, type Proof, reckon } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import {
  coilLowerCoefficient,
  jacketedReads,
  jacketLowerCoefficient,
  wettedJacketM2,
} from '../heat/lower-coefficients.js';
import { coolerConditions, coolingPowerAt, tapWater, waterFlowKgPerS } from '../heat/removable.js';

/** Cool enough to be opened [K]; the jacket runs this much below it at least [K] (common practice). */
const openK = 333.15;
const belowEndK = 20;
const steelJPerKgK = 500;

interface Batch {
  readonly batchMassKg: number;
  readonly heatCapacityJPerKgK: number;
  readonly startTemperatureK: number;
  readonly endTemperatureK: number;
}

const coilTime = (
  coil: Pick<ItemOf<'coil'>, 'areaM2' | 'tubeDiameterM'>,
  given: { readonly batch: Batch; readonly coefficient: number },
  proof: Proof | undefined,
): number | undefined => {
  const time = reckon(
    batchTimeFlowingMedium,
    {
      ...given.batch,
      overallCoefficientWPerM2K: given.coefficient,
      areaM2: coil.areaM2,
      mediumFlowKgPerS: waterFlowKgPerS(coil.tubeDiameterM),
      mediumHeatCapacityJPerKgK: tapWater.heatCapacityJPerKgK,
      mediumInletTemperatureK: tapWater.inletK,
    },
    proof,
  );
  return time.ok ? time.value.timeS : undefined;
};

/** Transfer and cooling power one after the other: longer than both at once. */
const jacketTime = (
  circulator: Pick<ItemOf<'circulator'>, 'coolingPowerW' | 'minTemperatureK'>,
  given: { readonly batch: Batch; readonly coefficient: number; readonly areaM2: number },
  proof: Proof | undefined,
): number | undefined => {
  const { batch, coefficient, areaM2 } = given;
  const mediumTemperatureK = Math.max(circulator.minTemperatureK, batch.endTemperatureK - belowEndK);
  const powerW = coolingPowerAt(circulator.coolingPowerW, mediumTemperatureK);
  if (areaM2 <= 0 || powerW <= 0) return undefined;
  const time = reckon(
    batchTimeIsothermal,
    { ...batch, overallCoefficientWPerM2K: coefficient, areaM2, mediumTemperatureK },
    proof,
  );
  if (!time.ok) return undefined;
  const heatJ =
    batch.batchMassKg * batch.heatCapacityJPerKgK * (batch.startTemperatureK - batch.endTemperatureK);
  return time.value.timeS + heatJ / powerW;
};

export const coolDown = judgement({
  id: 'heat.cool-down',
  title: 'Time to cool the batch',
  group: 'heat',
  kind: 'advice',
  unit: 's',
  of: {
    vessel: [...jacketedReads, 'massKg'],
    coil: ['areaM2', 'tubeDiameterM'],
    circulator: ['coolingPowerW', 'minTemperatureK'],
  },
  conditions: [...coolerConditions, 'densityKgPerM3', 'heatCapacityJPerKgK'],
  judge: ({ vessel, coil, circulator }, conditions, proof): Judgement | undefined => {
    const { temperatureMaxK, batchVolumeM3, densityKgPerM3, heatCapacityJPerKgK } = conditions;
    if (temperatureMaxK === undefined || temperatureMaxK <= openK) return undefined;
    if (batchVolumeM3 === undefined || densityKgPerM3 === undefined || heatCapacityJPerKgK === undefined)
      return undefined;
    const batch: Batch = {
      // The vessel cools with its batch: counted as more of it.
      batchMassKg: batchVolumeM3 * densityKgPerM3 + (vessel.massKg * steelJPerKgK) / heatCapacityJPerKgK,
      heatCapacityJPerKgK,
      startTemperatureK: temperatureMaxK,
      endTemperatureK: openK,
    };
    const byCoil =
      coil === null
        ? undefined
        : coilTime(coil, { batch, coefficient: coilLowerCoefficient(conditions, proof) }, proof);
    const coefficient =
      circulator === null || vessel.jacket === null
        ? undefined
        : jacketLowerCoefficient(vessel, conditions, proof);
    const byJacket =
      circulator === null || coefficient === undefined
        ? undefined
        : jacketTime(
            circulator,
            { batch, coefficient, areaM2: wettedJacketM2(vessel, batchVolumeM3) },
            proof,
          );
    const times = [byCoil, byJacket].filter((t) => t !== undefined);
    if (times.length === 0) {
      return {
        status: 'met',
        text: `${vessel.name} has neither coil nor jacket: from ${shownQuantity(temperatureMaxK, 'K')} it cools in the room, which takes hours.`,
      };
    }
    const timeS = Math.min(...times);
    return {
      status: 'met',
      text: `${vessel.name} with its batch cools from ${shownQuantity(temperatureMaxK, 'K')} to ${shownQuantity(openK, 'K')} in about ${shownQuantity(timeS, 's', 'up')} at the lower end of usual coefficients.`,
      demand: timeS,
    };
  },
  met: 'Nothing has to be cooled.',
  source: [published('kern-1950 ch. 18'), commonPractice('60 °C is cool enough to be opened')],
});
