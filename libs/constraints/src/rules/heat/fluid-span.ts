import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

const drivingDifferenceK = 10;

export const fluidSpan = judgement({
  id: 'heat.fluid-span',
  title: 'Jacket fluid stays liquid and stable over the span',
  group: 'heat',
  kind: 'hard',
  unit: 'K',
  of: { circulator: ['minTemperatureK'], fluid: ['minTemperatureK', 'maxTemperatureK'] },
  conditions: ['temperatureMinK', 'temperatureMaxK'],
  judge: ({ circulator, fluid }, { temperatureMinK, temperatureMaxK }) => {
    if (fluid === null)
      return circulator === null ? undefined : notMet(`${circulator.name} needs a jacket fluid.`);
    if (circulator === null) return notMet(`${fluid.name} has no circulator.`);
    const needed = {
      low: (temperatureMinK ?? 293.15) - drivingDifferenceK,
      high: (temperatureMaxK ?? 293.15) + drivingDifferenceK,
    };
    if (!isAtMost(needed.high, fluid.maxTemperatureK)) {
      return notMet(
        `${fluid.name} stands ${shownQuantity(fluid.maxTemperatureK, 'K', 'down')}; ${shownQuantity(needed.high, 'K', 'up')} is needed.`,
      );
    }
    return !isAtMost(fluid.minTemperatureK, needed.low)
      ? notMet(
          `${fluid.name} flows from ${shownQuantity(fluid.minTemperatureK, 'K', 'up')} on; ${shownQuantity(needed.low, 'K', 'down')} is needed.`,
        )
      : met;
  },
  met: 'The jacket fluid covers the span.',
  source: [commonPractice('span of heat-transfer fluids')],
});
