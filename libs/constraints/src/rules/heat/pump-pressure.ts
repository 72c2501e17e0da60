import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const pumpPressure = comparison({
  id: 'heat.pump-pressure',
  title: 'Pump cannot exceed PS of the jacket',
  group: 'heat',
  kind: 'hard',
  unit: 'Pa',
  utilisation: 'ratio',
  cautionFrom: 1.01,
  demandOf: { circulator: ['pumpPressurePaGauge', 'pressureControlled'], vessel: ['jacket'] },
  limitOf: { vessel: ['jacket'] },
  conditions: [],
  demand: ({ circulator, vessel }) => {
    if (circulator === null || vessel.jacket === null) return notApplicable;
    const { pumpPressurePaGauge, pressureControlled } = circulator;
    return known(
      pressureControlled
        ? Math.min(pumpPressurePaGauge, vessel.jacket.maxPressurePaGauge)
        : pumpPressurePaGauge,
    );
  },
  limit: ({ vessel }) => (vessel.jacket === null ? notApplicable : known(vessel.jacket.maxPressurePaGauge)),
  say: ({ demand, limit, parts }) =>
    `${parts.circulator?.name ?? 'The circulator'}${parts.circulator?.pressureControlled === true ? ', held by its pressure control,' : ''} gives ${demand}; PS of the jacket is ${limit}.`,
  source: [commonPractice('the pump of a shared circulator may not exceed PS of the weakest jacket')],
});
