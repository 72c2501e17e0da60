import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const bottomValveFits = judgement({
  id: 'accessories.bottom-valve',
  title: 'Bottom valve fits the bottom port',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['bottomPortM'], bottomValve: ['diameterM'] },
  conditions: [],
  judge: ({ vessel, bottomValve }) => {
    if (bottomValve === null) {
      return vessel.bottomPortM === null
        ? undefined
        : notMet(`${vessel.name} has a bottom port, which needs a valve.`);
    }
    if (vessel.bottomPortM === null)
      return notMet(`${vessel.name} has no bottom port for ${bottomValve.name}.`);
    return vessel.bottomPortM === bottomValve.diameterM
      ? met
      : notMet(
          `${bottomValve.name} needs a bottom port of ${shownQuantity(bottomValve.diameterM, 'm')}; ${vessel.name} has ${shownQuantity(vessel.bottomPortM, 'm')}.`,
        );
  },
  met: 'Bottom valve and bottom port are of one size.',
  source: [commonPractice('bottom ports of the range')],
});
