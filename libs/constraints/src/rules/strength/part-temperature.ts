import { isAtMost } from '../../compare.js';
import { setSlots } from '@flangewise/model';
import { standardEnds } from '@flangewise/catalogue';
import { type Judgement, met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Scale on which a reserve of temperature is read [K]. */
const spanK = 200;
/** How far past the end of the range a part rated at that end may be made as a special, subject to review [K]. */
const specialReachK = 50;

/** Parts that are as hot as the batch; what stands outside the cover, or behind the disc, is not. */
const hotParts = setSlots.filter(
  (slot) =>
    !['ventLine', 'shield', 'heater', 'limiter', 'gasLimit', 'pressureGauge', 'coupling'].includes(slot),
);

export const partTemperature = partRule({
  id: 'strength.part-temperature',
  title: 'Every part stands the temperatures',
  group: 'strength',
  kind: 'hard',
  unit: 'K',
  each: hotParts,
  reads: ['rating'],
  beside: {},
  conditions: ['temperatureMinK', 'temperatureMaxK'],
  judge: (part, { temperatureMinK, temperatureMaxK }): Judgement | undefined => {
    if (part.rating === undefined) return undefined;
    const { minTemperatureK, maxTemperatureK } = part.rating;
    if (temperatureMinK !== undefined && !isAtMost(minTemperatureK, temperatureMinK)) {
      return {
        ...notMet(
          `${part.name} goes down to ${shownQuantity(minTemperatureK, 'K', 'up')}; ${shownQuantity(temperatureMinK, 'K', 'down')} is asked.`,
        ),
        demand: temperatureMinK,
        limit: minTemperatureK,
      };
    }
    if (temperatureMaxK === undefined) return undefined;
    const figures = {
      demand: temperatureMaxK,
      limit: maxTemperatureK,
      utilisation: 1 - (maxTemperatureK - temperatureMaxK) / spanK,
    };
    if (isAtMost(temperatureMaxK, maxTemperatureK)) return { ...met, ...figures };
    const shown = `${part.name} goes up to ${shownQuantity(maxTemperatureK, 'K', 'down')}; ${shownQuantity(temperatureMaxK, 'K', 'up')} is asked`;
    return maxTemperatureK >= standardEnds.maxTemperatureK &&
      isAtMost(temperatureMaxK, maxTemperatureK + specialReachK)
      ? {
          ...figures,
          status: 'outside standard range',
          text: `${shown}: a special past the end of the range, to be reviewed and released.`,
        }
      : { ...figures, ...notMet(`${shown}.`) };
  },
  met: 'The temperatures stay within those of every part.',
  source: [commonPractice('TS of the assembly is the least of its parts')],
});
