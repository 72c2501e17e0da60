import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** Largest impeller over vessel diameter; ribbons and anchors scrape close to the wall. */
const largestShare = 0.98;
const smallestShare = 0.2;

export const stirrerFits = judgement({
  id: 'stirring.stirrer-fits',
  title: 'Stirrer fits into the vessel',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { vessel: ['geometry'], stirrer: ['diameterM'] },
  conditions: [],
  judge: ({ vessel, stirrer }) => {
    const share = stirrer.diameterM / vessel.geometry.innerDiameterM;
    const shown = `${stirrer.name} measures ${shownQuantity(stirrer.diameterM, 'm')}; ${vessel.name} is ${shownQuantity(vessel.geometry.innerDiameterM, 'm')} wide`;
    if (share > largestShare) return notMet(`${shown}.`);
    return share < smallestShare ? notMet(`${shown}: it would stir only the middle.`) : met;
  },
  met: 'The stirrer goes into the vessel and reaches its contents.',
  source: [commonPractice('impeller between a fifth and 98 % of the vessel diameter')],
});
