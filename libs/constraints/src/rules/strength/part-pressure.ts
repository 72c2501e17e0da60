import { isAtMost } from '../../compare.js';
import { setSlots } from '@flangewise/model';
import { specialEndPaGauge } from '@flangewise/catalogue';
import { type Judgement, met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** How far past the end of the range a part rated at that end may be made as a special, subject to review. */
export const specialReach = 1.5;

/**
 * Parts of a set that are under its pressure. The disc has its own rules, and the vent line stands behind it: its rating
 * is held against what flows through it.
 */
export const underPressure = setSlots.filter(
  (slot) => !['relief', 'ventLine', 'shield', 'heater', 'limiter', 'gasLimit'].includes(slot),
);

export const partPressure = partRule({
  id: 'strength.part-pressure',
  title: 'Every part stands the pressure',
  group: 'strength',
  kind: 'hard',
  unit: 'Pa',
  each: underPressure,
  reads: ['rating'],
  beside: {},
  conditions: ['pressureMaxPaGauge'],
  judge: (part, { pressureMaxPaGauge: demand }): Judgement | undefined => {
    if (demand === undefined || part.rating === undefined) return undefined;
    const limit = part.rating.maxPressurePaGauge;
    const figures = { demand, limit, utilisation: demand / limit };
    const shown = `${part.name} is rated ${shownQuantity(limit, 'Pa', 'down')}; ${shownQuantity(demand, 'Pa', 'up')} is asked`;
    if (isAtMost(demand, limit)) return { ...met, ...figures };
    const isLast = limit >= specialEndPaGauge;
    return isLast && isAtMost(demand, limit * specialReach)
      ? {
          ...figures,
          status: 'outside standard range',
          text: `${shown}: a special past the end of the range, to be reviewed and released.`,
        }
      : { ...figures, ...notMet(`${shown}.`) };
  },
  met: 'PS of every part is at or above the highest pressure.',
  source: [
    published('2014/68/EU annex I 2.1'),
    commonPractice('PS of the assembly is the least of its parts'),
  ],
});
