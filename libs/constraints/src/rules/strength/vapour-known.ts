import { notDecidable } from '../../figure.js';
import { mainLiquid, vapourPressureAt } from '../../liquid.js';
import { judgement } from '../../rule.js';
import { shownQuantity } from '../../shown-quantity.js';
import { commonPractice } from '../../source.js';

export const vapourKnown = judgement({
  id: 'strength.vapour-known',
  title: 'Vapour pressure of the contents is known',
  group: 'strength',
  kind: 'hard',
  of: { vessel: [] },
  conditions: ['media', 'temperatureMaxK'],
  judge: (_, { media, temperatureMaxK }) => {
    const liquid = mainLiquid(media);
    if (liquid === undefined || temperatureMaxK === undefined) return undefined;
    return vapourPressureAt(liquid, temperatureMaxK) === undefined
      ? notDecidable(
          `${liquid.name} has no vapour pressure on file at ${shownQuantity(temperatureMaxK, 'K')}: the stated pressure was taken as the total. Above it the contents can boil over or burst the disc; measure it or give it with its source.`,
          `vapour pressure of ${liquid.name} at ${shownQuantity(temperatureMaxK, 'K')}`,
        )
      : undefined;
  },
  met: 'The vapour pressure of the contents is on file.',
  source: [commonPractice('the total pressure is at least the vapour pressure of the contents')],
});
