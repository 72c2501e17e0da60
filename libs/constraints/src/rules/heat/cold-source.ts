import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Tap water cools to about this temperature [K]. */
const tapWaterK = 288.15;

export const coldSource = judgement({
  id: 'heat.cold-source',
  title: 'Lowest temperature can be reached',
  group: 'heat',
  kind: 'hard',
  unit: 'K',
  of: { circulator: ['minTemperatureK'] },
  conditions: ['temperatureMinK'],
  judge: ({ circulator }, { temperatureMinK }) => {
    if (temperatureMinK === undefined || temperatureMinK >= tapWaterK) return undefined;
    return circulator === null
      ? notMet(
          `${shownQuantity(temperatureMinK, 'K', 'down')} is below what tap water reaches; a circulator with a jacket is needed.`,
        )
      : met;
  },
  met: 'The circulator reaches the lowest temperature.',
  source: [commonPractice('tap water near 15 °C')],
});
