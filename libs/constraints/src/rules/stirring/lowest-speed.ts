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
  conditions: ['speedMinPerS'],
  demand: ({ drive }) => known(drive.minSpeedPerS),
  limit: (_, { speedMinPerS }) => (speedMinPerS === undefined ? notApplicable : known(speedMinPerS)),
  say: ({ demand, limit, parts }) => `${parts.drive.name} turns from ${demand} on; ${limit} are wanted.`,
  source: [commonPractice('speed range of the drive')],
});
