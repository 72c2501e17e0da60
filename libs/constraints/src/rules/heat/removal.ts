import { known, missing, notApplicable, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { coilSource } from './lower-coefficients.js';
import { coolerConditions, coolerReads, removableW } from './removable.js';

export const heatRemoval = comparison({
  id: 'heat.removal',
  title: 'Heat of reaction is removed',
  group: 'heat',
  kind: 'hard',
  unit: 'W',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: coolerReads,
  conditions: ['peakHeatW', 'exothermic', 'gases', ...coolerConditions],
  demand: (_, { peakHeatW, exothermic, gases }) =>
    peakHeatW !== undefined
      ? known(peakHeatW)
      : exothermic === true
        ? missing(gases.length === 0 ? 'heat that the reaction gives at its peak' : 'process.peakUptake')
        : notApplicable,
  limit: (parts, conditions, proof) => {
    // Nothing to set it against: said by the demand.
    if (conditions.peakHeatW === undefined) return missing();
    if (parts.coil === null && (parts.vessel.jacket === null || parts.circulator === null))
      return notApplicable;
    const removed = removableW(parts, conditions, proof);
    return removed === undefined
      ? missing('process.temperature.highest')
      : unverified(
          removed,
          'The lower end of usual overall coefficients was taken; a measured value should replace it.',
        );
  },
  say: ({ demand, limit }) => `At its peak the reaction gives ${demand}; the cooling takes away ${limit}.`,
  source: [
    published('perry-7 table 11-7'),
    coilSource,
    commonPractice('unfavourable end of U decides; tap water 20 °C at 2.5 m/s; jacket at most 60 K colder'),
  ],
});
