import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const stirrerInCoil = judgement({
  id: 'stirring.stirrer-in-coil',
  title: 'Stirrer turns free inside the coil',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { coil: ['innerClearanceM'], stirrer: ['diameterM'] },
  conditions: [],
  judge: ({ coil, stirrer }) => {
    if (coil === null) return undefined;
    return stirrer.diameterM < coil.innerClearanceM
      ? met
      : notMet(
          `${stirrer.name} measures ${shownQuantity(stirrer.diameterM, 'm')}; ${coil.name} leaves ${shownQuantity(coil.innerClearanceM, 'm')}.`,
        );
  },
  met: 'The stirrer turns free inside the coil.',
  source: [commonPractice('no contact of stirrer and coil')],
});
