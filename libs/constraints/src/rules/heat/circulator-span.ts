import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** The fluid runs this much beyond the batch on either side [K]. */
const drivingDifferenceK = 10;

export const circulatorSpan = judgement({
  id: 'heat.circulator-span',
  title: 'Circulator covers the temperatures',
  group: 'heat',
  kind: 'hard',
  unit: 'K',
  of: { circulator: ['minTemperatureK', 'maxTemperatureK'] },
  conditions: ['temperatureMinK', 'temperatureMaxK'],
  judge: ({ circulator }, { temperatureMinK, temperatureMaxK }) => {
    if (circulator === null) return undefined;
    if (
      temperatureMaxK !== undefined &&
      !isAtMost(temperatureMaxK + drivingDifferenceK, circulator.maxTemperatureK)
    ) {
      return notMet(
        `${circulator.name} goes up to ${shownQuantity(circulator.maxTemperatureK, 'K', 'down')}; ${shownQuantity(temperatureMaxK + drivingDifferenceK, 'K', 'up')} is needed in the jacket.`,
      );
    }
    return temperatureMinK !== undefined &&
      !isAtMost(circulator.minTemperatureK, temperatureMinK - drivingDifferenceK)
      ? notMet(
          `${circulator.name} goes down to ${shownQuantity(circulator.minTemperatureK, 'K', 'up')}; ${shownQuantity(temperatureMinK - drivingDifferenceK, 'K', 'down')} is needed in the jacket.`,
        )
      : met;
  },
  met: 'The circulator covers the temperatures with 10 K to drive the heat.',
  source: [commonPractice('jacket 10 K beyond the batch')],
});
