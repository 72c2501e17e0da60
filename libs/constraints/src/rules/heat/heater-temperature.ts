import { known, missing, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Difference that drives the heat from the wall into the batch [K]. */
const drivingDifferenceK = 10;

export const heaterTemperature = comparison({
  id: 'heat.heater-temperature',
  title: 'Mantle gets hot enough',
  group: 'heat',
  kind: 'hard',
  unit: 'K',
  utilisation: { span: 200 },
  demandOf: {},
  limitOf: { heater: ['maxWallTemperatureK'] },
  conditions: ['temperatureMaxK'],
  demand: (_, { temperatureMaxK }) =>
    temperatureMaxK === undefined
      ? missing('process.temperature.highest')
      : known(temperatureMaxK + drivingDifferenceK),
  limit: ({ heater }) => (heater === null ? notApplicable : known(heater.maxWallTemperatureK)),
  say: ({ demand, limit, parts }) =>
    `The wall has to reach ${demand}; ${parts.heater?.name ?? 'the mantle'} gives ${limit}.`,
  source: [commonPractice('wall 10 K above the batch at least')],
});
