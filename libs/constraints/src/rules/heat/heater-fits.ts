import { isAtMost } from '../../compare.js';
import { type Judgement, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const heaterFits = judgement({
  id: 'heat.heater-fits',
  title: 'Mantle fits the vessel',
  group: 'heat',
  kind: 'hard',
  unit: 'm',
  of: { vessel: ['bore', 'geometry', 'construction', 'special'], heater: ['bore', 'maxVesselDiameterM'] },
  conditions: [],
  judge: ({ vessel, heater }): Judgement | undefined => {
    if (heater === null) return undefined;
    if (vessel.construction === 'glass')
      return notMet(
        `${vessel.name} is of glass: a mantle would hide and shock it; glass is heated by a jacket.`,
      );
    if (heater.bore !== vessel.bore)
      return notMet(
        `${heater.name} is made for bore ${String(heater.bore)}; ${vessel.name} has bore ${String(vessel.bore)}.`,
      );
    const outer = vessel.geometry.innerDiameterM + 2 * vessel.geometry.wallThicknessM;
    const fits = isAtMost(outer, heater.maxVesselDiameterM);
    if (!fits && vessel.special === true) {
      return {
        status: 'outside standard range',
        text: `${vessel.name} is ${shownQuantity(outer, 'm', 'up')} wide: ${heater.name} is widened for it, to be reviewed with the special vessel.`,
      };
    }
    return fits
      ? met
      : notMet(
          `${vessel.name} is ${shownQuantity(outer, 'm', 'up')} wide; ${heater.name} takes ${shownQuantity(heater.maxVesselDiameterM, 'm', 'down')}.`,
        );
  },
  met: 'The mantle fits the vessel.',
  source: [commonPractice('mantles of the range')],
});
