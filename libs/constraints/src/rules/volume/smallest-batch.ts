import { known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const smallestBatch = comparison({
  id: 'volume.smallest-batch',
  title: 'Batch is large enough to be stirred',
  group: 'volume',
  kind: 'hard',
  unit: 'm3',
  utilisation: 'ratio',
  demandOf: { vessel: ['smallestFillL'] },
  limitOf: {},
  conditions: ['batchVolumeM3'],
  demand: ({ vessel }) => known(vessel.smallestFillL / 1000),
  limit: (_, { batchVolumeM3 }) =>
    batchVolumeM3 === undefined ? missing('sets.batchVolume') : known(batchVolumeM3),
  say: ({ demand, limit, parts }) =>
    `${parts.vessel.name} is stirred from ${demand} on; the batch is ${limit}.`,
  source: [commonPractice('the impeller has to be covered')],
});
