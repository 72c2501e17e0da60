import type { Conditions } from '../../conditions.js';
import { type Figure, known, missing, notApplicable, type Proof, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import {
  type HeatingConditions,
  heatingConditions,
  type HeatingParts,
  heatingReads,
  heatUpTime,
} from './heat-up-time.js';

/** Longer than any batch waits: heating that never reaches its end [s]. */
const neverS = 1e9;

type WantedConditions = HeatingConditions & Pick<Conditions, 'heatUpTimeS'>;

/** How long the parts take to heat the batch [s]. */
const neededS = (parts: HeatingParts, conditions: WantedConditions, proof: Proof | undefined): Figure => {
  if (conditions.heatUpTimeS === undefined) return notApplicable;
  const heating = heatUpTime(parts, conditions, proof);
  switch (heating.kind) {
    case 'no heating':
      return notApplicable;
    case 'missing':
      return missing(...heating.fields);
    case 'never':
      return known(neverS);
    case 'time':
      return unverified(
        heating.timeS,
        'Lower end of usual coefficients, losses through 30 mm of insulation.',
      );
  }
};

const wantedS = (_: unknown, { heatUpTimeS }: Pick<Conditions, 'heatUpTimeS'>): Figure =>
  heatUpTimeS === undefined ? notApplicable : known(heatUpTimeS);

const head = {
  group: 'heat',
  kind: 'hard',
  unit: 's',
  utilisation: 'ratio',
  limitOf: {},
  conditions: ['heatUpTimeS', ...heatingConditions],
  limit: wantedS,
  source: [published('kern-1950 ch. 18'), commonPractice('vessel follows the batch; 30 mm of insulation')],
} as const;

const sentence = (names: { heating: string; vessel: string }, shown: { demand: string; limit: string }) =>
  `${names.heating} brings ${names.vessel} with its batch from the lowest to the highest temperature in ${shown.demand}; ${shown.limit} are wanted.`;

export const heatUpByMantle = comparison({
  ...head,
  id: 'heat.heat-up-time',
  title: 'Mantle heats the batch in the wanted time',
  demandOf: { vessel: heatingReads.vessel, heater: heatingReads.heater },
  demand: ({ vessel, heater }, conditions, proof) =>
    vessel.jacket === null ? neededS({ vessel, heater, circulator: null }, conditions, proof) : notApplicable,
  say: ({ parts, ...shown }) =>
    sentence({ heating: parts.heater?.name ?? 'The mantle', vessel: parts.vessel.name }, shown),
});

export const heatUpByJacket = comparison({
  ...head,
  id: 'heat.heat-up-time-by-jacket',
  title: 'Jacket heats the batch in the wanted time',
  demandOf: { vessel: heatingReads.vessel, circulator: heatingReads.circulator },
  demand: ({ vessel, circulator }, conditions, proof) =>
    vessel.jacket === null ? notApplicable : neededS({ vessel, heater: null, circulator }, conditions, proof),
  say: ({ parts, ...shown }) =>
    sentence({ heating: parts.circulator?.name ?? 'The jacket', vessel: parts.vessel.name }, shown),
});
