import { specialEndPaGauge } from '@flangewise/catalogue';
import { isAtMost } from '../../compare.js';
import { type Judgement, met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { shownQuantity } from '../../shown-quantity.js';
import { commonPractice, published } from '../../source.js';
import { specialReach, underPressure } from '../strength/part-pressure.js';
import { burstReads, highestPressurePaGauge } from './highest-pressure.js';

/** The vessel has the rule of its own. */
const protectedParts = underPressure.filter((slot) => slot !== 'vessel');

export const burstBelowParts = partRule({
  id: 'relief.burst-below-parts',
  title: 'Disc protects every part',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  each: protectedParts,
  reads: ['rating'],
  beside: { relief: burstReads },
  conditions: [],
  judge: (part, _, { beside: { relief } }): Judgement | undefined => {
    if (part.rating === undefined) return undefined;
    const demand = highestPressurePaGauge(relief);
    const limit = part.rating.maxPressurePaGauge;
    const figures = { demand, limit };
    if (isAtMost(demand, limit)) return { ...met, ...figures };
    const shown = `${part.name} is rated ${shownQuantity(limit, 'Pa', 'down')}; ${relief.name} opens at ${shownQuantity(demand, 'Pa', 'up')} at the latest`;
    return limit >= specialEndPaGauge && isAtMost(demand, limit * specialReach)
      ? {
          ...figures,
          status: 'outside standard range',
          text: `${shown}: a special past the end of the range, to be reviewed and released.`,
        }
      : { ...figures, ...notMet(`${shown}: take a disc that opens earlier or a stronger part.`) };
  },
  met: 'Every part stands the pressure at which the disc opens at the latest.',
  source: [
    published('2014/68/EU annex I 2.11.2'),
    commonPractice('PS of the assembly is the least of its parts'),
  ],
});
