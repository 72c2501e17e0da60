import { deratedTorque } from '@flangewise/engineering';
import { figureOf, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { magnetTemperatureK } from './magnet-temperature.js';
import { impellerConditions, impellerLoad, impellerReads } from './impeller-load.js';

export const couplingTorque = comparison({
  id: 'stirring.coupling-torque',
  title: 'Coupling carries the stirrer torque',
  group: 'stirring',
  kind: 'hard',
  unit: 'N.m',
  utilisation: 'ratio',
  demandOf: impellerReads,
  limitOf: { coupling: ['ratedTorqueNm', 'magnet', 'cooled', 'maxMagnetTemperatureK'] },
  conditions: [...impellerConditions, 'temperatureMaxK'],
  demand: (parts, liquid, proof) => impellerLoad('highTorqueNm', parts, { liquid, proof }),
  limit: ({ coupling }, { temperatureMaxK }, proof) =>
    figureOf(
      reckon(
        deratedTorque,
        {
          magnet: coupling.magnet,
          ratedTorqueNm: coupling.ratedTorqueNm,
          temperatureK: magnetTemperatureK(coupling, temperatureMaxK),
          serviceFactor: 1,
        },
        proof,
      ),
      (r) => r.workingTorqueNm,
    ),
  say: ({ demand, limit, parts }, { serviceFactor }) =>
    `${parts.stirrer.name} takes up to ${demand} (service factor ${String(serviceFactor)}); ${parts.coupling.name} carries ${limit} at the highest temperature.`,
  source: [
    published('furukawa-2012'),
    published('rieger-1988'),
    commonPractice('torque at the highest viscosity and wanted speed with a service factor'),
  ],
});
