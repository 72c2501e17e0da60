import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const thermowellReach = judgement({
  id: 'accessories.thermowell-reach',
  title: 'Thermowell reaches into the vessel and not to its bottom',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['depthM'], temperatureProbe: ['reachM', 'kind'] },
  conditions: [],
  judge: ({ vessel, temperatureProbe }) => {
    const reach = temperatureProbe.reachM;
    if (reach === undefined) return undefined;
    const shown = `${temperatureProbe.name} reaches ${shownQuantity(reach, 'm')}; ${vessel.name} is ${shownQuantity(vessel.depthM, 'm')} deep`;
    if (reach > vessel.depthM) return notMet(`${shown}: it would stand on the bottom.`);
    return reach < 0.5 * vessel.depthM ? notMet(`${shown}: it may not reach the liquid.`) : met;
  },
  met: 'The thermowell ends in the lower half of the vessel.',
  source: [commonPractice('a thermowell ends between half the depth and the bottom')],
});
