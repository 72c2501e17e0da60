import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** A shared heater or circulator may get hotter than the mounted set stands: its limiter keeps it below TS. */
export const limitBelowTs = judgement({
  id: 'protection.limit-below-ts',
  title: 'Limiter can be set to TS of the vessel or below',
  group: 'protection',
  kind: 'hard',
  unit: 'K',
  of: { vessel: ['rating'], limiter: ['limitRangeK'] },
  conditions: [],
  judge: ({ vessel, limiter }) => {
    if (limiter === null || vessel.rating === undefined) return undefined;
    const { maxTemperatureK } = vessel.rating;
    return limiter.limitRangeK.lowest <= maxTemperatureK
      ? met
      : notMet(
          `${limiter.name} cannot be set below ${shownQuantity(limiter.limitRangeK.lowest, 'K', 'up')}; TS of ${vessel.name} is ${shownQuantity(maxTemperatureK, 'K', 'down')}.`,
        );
  },
  met: 'The limiter is set to TS of the mounted vessel or below, so that no shared heat source can exceed it.',
  source: [commonPractice('no shared source may exceed TS of the mounted set')],
});
