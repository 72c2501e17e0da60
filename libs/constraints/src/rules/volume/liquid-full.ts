import { type Figure, known, missing, notApplicable, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { fillTemperatureK } from '../../liquid.js';
import { commonPractice } from '../../source.js';
import type { Conditions } from '../../conditions.js';

/** Room that has to stay above the liquid, share of the inner volume. */
const leastRoom = 0.05;

type Batch = Pick<
  Conditions,
  'batchVolumeM3' | 'hotVolumeM3' | 'hotVolumeEstimated' | 'temperatureMinK' | 'temperatureMaxK'
>;

const hottest = (batch: Batch): Figure => {
  const { batchVolumeM3, hotVolumeM3, hotVolumeEstimated, temperatureMaxK } = batch;
  if (batchVolumeM3 === undefined) return notApplicable;
  if (hotVolumeM3 !== undefined)
    return hotVolumeEstimated === true
      ? unverified(hotVolumeM3, 'Its expansion is an estimate.')
      : known(hotVolumeM3);
  if (temperatureMaxK === undefined) return missing('process.temperature.highest');
  return temperatureMaxK <= fillTemperatureK(batch.temperatureMinK)
    ? known(batchVolumeM3)
    : missing('density of the batch at its highest temperature');
};

export const neverLiquidFull = comparison({
  id: 'volume.liquid-full',
  title: 'Vessel is never full of liquid',
  group: 'volume',
  kind: 'hard',
  unit: 'm3',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { vessel: ['innerVolumeL'] },
  conditions: ['batchVolumeM3', 'hotVolumeM3', 'hotVolumeEstimated', 'temperatureMinK', 'temperatureMaxK'],
  demand: (_, batch) => hottest(batch),
  limit: ({ vessel }) => known((vessel.innerVolumeL / 1000) * (1 - leastRoom)),
  say: ({ demand, limit, parts }) =>
    `At the highest temperature the batch takes ${demand}; above ${limit} ${parts.vessel.name} would be full of liquid, and its pressure would rise by tens of bar a kelvin.`,
  source: [commonPractice('never liquid-full at the highest temperature')],
});
