import { deratedTorque } from '@flangewise/engineering';
import type { ItemOf } from '@flangewise/model';
import type { Conditions } from '../../conditions.js';
import { type Figure, figureOf, type Proof, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { magnetTemperatureK } from './magnet-temperature.js';
import { impellerConditions, impellerLoad, impellerReads } from './impeller-load.js';

/** What the coupling carries at the highest temperature, without a service factor: the demand has it. */
export const carriedTorque = (
  { coupling }: { readonly coupling: Pick<ItemOf<'coupling'>, 'ratedTorqueNm' | 'magnet' | 'cooled'> },
  { temperatureMaxK }: Pick<Conditions, 'temperatureMaxK'>,
  proof?: Proof,
): Figure =>
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
  );

export const couplingReads = ['ratedTorqueNm', 'magnet', 'cooled', 'maxMagnetTemperatureK'] as const;

export const couplingTorque = comparison({
  id: 'stirring.coupling-torque',
  title: 'Coupling carries the stirrer torque',
  group: 'stirring',
  kind: 'hard',
  unit: 'N.m',
  utilisation: 'ratio',
  demandOf: impellerReads,
  limitOf: { coupling: couplingReads },
  conditions: [...impellerConditions, 'temperatureMaxK'],
  demand: (parts, liquid, proof) => impellerLoad('highTorqueNm', parts, { liquid, proof }),
  limit: carriedTorque,
  say: ({ demand, limit, parts }, { serviceFactor }) =>
    `${parts.stirrer.name} takes up to ${demand} (service factor ${String(serviceFactor)}); ${parts.coupling.name} carries ${limit} at the highest temperature.`,
  source: [
    published('furukawa-2012'),
    published('rieger-1988'),
    commonPractice('torque at the highest viscosity and wanted speed with a service factor'),
  ],
});
