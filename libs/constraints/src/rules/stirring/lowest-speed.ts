import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const lowestSpeed = comparison({
  id: 'stirring.lowest-speed',
  title: 'Drive turns slowly enough',
  group: 'stirring',
  kind: 'hard',
  unit: '/s',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { drive: ['minSpeedPerS'] },
  limitOf: {},
  conditions: ['speedMinPerS', 'speedMaxPerS'],
  demand: ({ drive }) => known(drive.minSpeedPerS),
  limit: (_, { speedMinPerS, speedMaxPerS }) => {
    const slowest = speedMinPerS ?? speedMaxPerS;
    return slowest === undefined ? notApplicable : known(slowest);
  },
  say: ({ demand, limit, parts }) =>
    `${parts.drive.name} turns from ${demand} on; ${limit} is the lowest that is wanted.`,
  source: [commonPractice('speed range of the drive')],
});
