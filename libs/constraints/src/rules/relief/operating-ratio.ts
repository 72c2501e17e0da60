import { known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { published } from '../../source.js';

export const operatingRatio = comparison({
  id: 'relief.operating-ratio',
  title: 'Process stays below the operating ratio of the disc',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { relief: ['burstPressurePaGauge', 'tolerance', 'operatingRatio'] },
  conditions: ['pressureMaxPaGauge'],
  demand: (_, { pressureMaxPaGauge }) =>
    pressureMaxPaGauge === undefined ? missing('process.pressure.highest') : known(pressureMaxPaGauge),
  limit: ({ relief }) => known(relief.burstPressurePaGauge * (1 - relief.tolerance) * relief.operatingRatio),
  say: ({ demand, limit, parts }) =>
    `The process reaches ${demand}; ${parts.relief.name} may lastingly see ${limit}.`,
  source: [published('EN ISO 4126-2')],
});
