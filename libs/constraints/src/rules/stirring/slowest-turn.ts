import { type Figure, known, notApplicable, type Proof } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { carriedTorque, couplingReads } from './coupling-torque.js';
import { driveEfficiency } from './drive-load.js';
import { impellerConditions, impellerLoad, type ImpellerParts, impellerReads } from './impeller-load.js';

interface Turning extends ImpellerParts {
  readonly drive: { readonly minSpeedPerS: number };
}

/** Torque where the drive turns as slowly as it can; once a speed is wanted, the torque at that speed decides. */
const slowestTorque = (
  parts: Turning,
  liquid: Parameters<typeof impellerLoad>[2]['liquid'],
  proof?: Proof,
): Figure =>
  liquid.speedMaxPerS !== undefined || liquid.viscosityMaxPaS === undefined
    ? notApplicable
    : impellerLoad('highTorqueNm', parts, {
        liquid: { ...liquid, speedMaxPerS: parts.drive.minSpeedPerS },
        proof,
      });

const slowly = ({ drive }: Turning): string => shownQuantity(drive.minSpeedPerS, '/s');

const source = [
  published('furukawa-2012'),
  published('rieger-1988'),
  commonPractice('a drive does not turn below its lowest speed'),
];

/** A system that cannot turn its batch at any speed is none, even while nobody has said a speed. */
export const couplingAtSlowest = comparison({
  id: 'stirring.coupling-at-slowest',
  title: 'Coupling turns the thickest batch',
  group: 'stirring',
  kind: 'hard',
  unit: 'N.m',
  utilisation: 'ratio',
  demandOf: { ...impellerReads, drive: ['minSpeedPerS'] },
  limitOf: { coupling: couplingReads },
  conditions: [...impellerConditions, 'temperatureMaxK'],
  demand: slowestTorque,
  limit: carriedTorque,
  say: ({ demand, limit, parts }) =>
    `At ${slowly(parts)}, as slowly as ${parts.drive.name} turns, ${parts.stirrer.name} takes up to ${demand}; ${parts.coupling.name} carries ${limit} at the highest temperature.`,
  source,
});

export const driveAtSlowest = comparison({
  id: 'stirring.drive-at-slowest',
  title: 'Drive turns the thickest batch',
  group: 'stirring',
  kind: 'hard',
  unit: 'N.m',
  utilisation: 'ratio',
  demandOf: { ...impellerReads, drive: ['minSpeedPerS'] },
  limitOf: { drive: ['maxTorqueNm'] },
  conditions: impellerConditions,
  demand: slowestTorque,
  limit: ({ drive }) => known(drive.maxTorqueNm * driveEfficiency),
  say: ({ demand, limit, parts }) =>
    `At ${slowly(parts)}, its lowest speed, ${parts.stirrer.name} takes up to ${demand}; ${parts.drive.name} gives ${limit} at the stirrer.`,
  source,
});
