import { known, knownUpTo, missing, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

const wanted = (speedMaxPerS: number | undefined) =>
  speedMaxPerS === undefined ? missing('process.stirringSpeed') : known(speedMaxPerS);

export const driveSpeed = comparison({
  id: 'stirring.drive-speed',
  title: 'Drive reaches the wanted speed',
  group: 'stirring',
  kind: 'hard',
  unit: '/s',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: {},
  limitOf: { drive: ['maxSpeedPerS'] },
  conditions: ['speedMaxPerS'],
  demand: (_, { speedMaxPerS }) => wanted(speedMaxPerS),
  limit: ({ drive }) => known(drive.maxSpeedPerS),
  say: ({ demand, limit, parts }) => `${demand} are wanted; ${parts.drive.name} turns up to ${limit}.`,
  source: [commonPractice('speed range of the drive')],
});

export const couplingSpeed = comparison({
  id: 'stirring.coupling-speed',
  title: 'Coupling stands the wanted speed',
  group: 'stirring',
  kind: 'hard',
  unit: '/s',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { coupling: ['maxSpeedPerS'] },
  conditions: ['speedMaxPerS'],
  demand: (_, { speedMaxPerS }) => wanted(speedMaxPerS),
  limit: ({ coupling }) => knownUpTo(coupling.maxSpeedPerS, coupling.maxSpeedPerS * 1.2),
  say: ({ demand, limit, parts }) =>
    `${demand} are wanted; ${parts.coupling.name} is meant for up to ${limit}.`,
  source: [commonPractice('speed limit of the bearings; up to a fifth above it after review')],
});

export const stirrerSpeed = comparison({
  id: 'stirring.stirrer-speed',
  title: 'Stirrer stands the wanted speed',
  group: 'stirring',
  kind: 'hard',
  unit: '/s',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { stirrer: ['maxSpeedPerS'] },
  conditions: ['speedMaxPerS'],
  demand: (_, { speedMaxPerS }) => wanted(speedMaxPerS),
  limit: ({ stirrer }) => (stirrer.maxSpeedPerS > 0 ? known(stirrer.maxSpeedPerS) : notApplicable),
  say: ({ demand, limit, parts }) =>
    `${demand} are wanted; ${parts.stirrer.name} is meant for up to ${limit}.`,
  source: [commonPractice('speed limit of the stirrer')],
});
