import { known, missing, notApplicable, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { heatingConditions, heatingReads, heatUpTime } from './heat-up-time.js';

/** Longer than any batch waits: heating that never reaches its end [s]. */
const neverS = 1e9;

export const heatUpInTime = comparison({
  id: 'heat.heat-up-time',
  title: 'Batch is hot in the wanted time',
  group: 'heat',
  kind: 'hard',
  unit: 's',
  utilisation: 'ratio',
  demandOf: heatingReads,
  limitOf: {},
  conditions: ['heatUpTimeS', ...heatingConditions],
  demand: (parts, conditions, proof) => {
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
  },
  limit: (_, { heatUpTimeS }) => (heatUpTimeS === undefined ? notApplicable : known(heatUpTimeS)),
  say: ({ demand, limit, parts }) =>
    `${parts.heater?.name ?? parts.circulator?.name ?? 'The heating'} brings ${parts.vessel.name} with its batch from the lowest to the highest temperature in ${demand}; ${limit} are wanted.`,
  source: [published('kern-1950 ch. 18'), commonPractice('vessel follows the batch; 30 mm of insulation')],
});
