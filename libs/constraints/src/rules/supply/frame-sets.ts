import { known } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const frameSets = comparison({
  id: 'supply.frame-sets',
  title: 'Frame carries all vessels that work at once',
  group: 'supply',
  kind: 'hard',
  unit: '1',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { frame: ['maxSets'] },
  conditions: ['vesselsAtOnce'],
  demand: (_, { vesselsAtOnce }) => known(vesselsAtOnce),
  limit: ({ frame }) => known(frame.maxSets),
  say: ({ demand, limit, parts }) => `${demand} vessels work at once; ${parts.frame.name} carries ${limit}.`,
  source: [commonPractice('places of the frames of the range')],
});
