import { known } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { impellerConditions, impellerLoad, impellerReads } from './impeller-load.js';

/** From motor shaft to stirrer: bearings and can (common practice). */
export const driveEfficiency = 0.85;

export const driveTorque = comparison({
  id: 'stirring.drive-torque',
  title: 'Drive gives the stirrer torque',
  group: 'stirring',
  kind: 'hard',
  unit: 'N.m',
  utilisation: 'ratio',
  demandOf: impellerReads,
  limitOf: { drive: ['maxTorqueNm'] },
  conditions: impellerConditions,
  demand: (parts, liquid, proof) => impellerLoad('highTorqueNm', parts, { liquid, proof }),
  limit: ({ drive }) => known(drive.maxTorqueNm * driveEfficiency),
  say: ({ demand, limit, parts }) =>
    `${parts.stirrer.name} takes up to ${demand}; ${parts.drive.name} gives ${limit} at the stirrer.`,
  source: [published('furukawa-2012'), commonPractice('85 % from motor to stirrer')],
});

export const drivePower = comparison({
  id: 'stirring.drive-power',
  title: 'Drive gives the stirring power',
  group: 'stirring',
  kind: 'hard',
  unit: 'W',
  utilisation: 'ratio',
  demandOf: impellerReads,
  limitOf: { drive: ['powerW'] },
  conditions: impellerConditions,
  demand: (parts, liquid, proof) => impellerLoad('highPowerW', parts, { liquid, proof }),
  limit: ({ drive }) => known(drive.powerW * driveEfficiency),
  say: ({ demand, limit, parts }) =>
    `${parts.stirrer.name} takes up to ${demand}; ${parts.drive.name} gives ${limit} at the stirrer.`,
  source: [published('furukawa-2012'), commonPractice('85 % from motor to stirrer')],
});
