import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { magnetTemperatureK } from './magnet-temperature.js';

export const couplingTemperature = comparison({
  id: 'stirring.coupling-temperature',
  title: 'Magnets stay below their limit',
  group: 'stirring',
  kind: 'hard',
  unit: 'K',
  utilisation: { span: 150 },
  demandOf: { coupling: ['cooled'] },
  limitOf: { coupling: ['maxMagnetTemperatureK'] },
  conditions: ['temperatureMaxK'],
  demand: ({ coupling }, { temperatureMaxK }) =>
    temperatureMaxK === undefined ? notApplicable : known(magnetTemperatureK(coupling, temperatureMaxK)),
  limit: ({ coupling }) => known(coupling.maxMagnetTemperatureK),
  say: ({ demand, limit, parts }) =>
    `The magnets of ${parts.coupling.name} reach about ${demand}; ${limit} is their limit.`,
  source: [commonPractice('magnets half the way from ambient to the batch, near 60 °C where cooled')],
});
