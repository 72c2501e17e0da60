import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** A gauge that reads more than this many times PS is too coarse for the set. */
const coarsest = 4;

export const gaugeRange = judgement({
  id: 'relief.gauge-range',
  title: 'Pressure gauge covers PS and can be read',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  of: { vessel: ['rating'], pressureGauge: ['rangePaGauge'] },
  conditions: [],
  judge: ({ vessel, pressureGauge }) => {
    const ps = vessel.rating?.maxPressurePaGauge ?? 0;
    const shown = `${pressureGauge.name} reads to ${shownQuantity(pressureGauge.rangePaGauge, 'Pa')}; PS of ${vessel.name} is ${shownQuantity(ps, 'Pa', 'down')}`;
    if (!isAtMost(ps, pressureGauge.rangePaGauge)) return notMet(`${shown}.`);
    return isAtMost(pressureGauge.rangePaGauge, ps * coarsest) ? met : notMet(`${shown}: too coarse.`);
  },
  met: 'The gauge covers PS and can be read.',
  source: [commonPractice('range of the gauge from PS to four times PS')],
});
