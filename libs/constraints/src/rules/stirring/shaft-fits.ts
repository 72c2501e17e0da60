import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** The impeller sits between these shares of the depth below the sealing plane. */
const shallowest = 0.55;

export const shaftLength = judgement({
  id: 'stirring.shaft-length',
  title: 'Shaft reaches the lower part of the vessel',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { vessel: ['depthM'], shaft: ['lengthM'] },
  conditions: [],
  judge: ({ vessel, shaft }) => {
    const shown = `${shaft.name} is ${shownQuantity(shaft.lengthM, 'm')} long; ${vessel.name} is ${shownQuantity(vessel.depthM, 'm')} deep`;
    if (shaft.lengthM >= vessel.depthM) return notMet(`${shown}: it would touch the bottom.`);
    return isAtMost(shallowest * vessel.depthM, shaft.lengthM)
      ? met
      : notMet(`${shown}: the stirrer would sit too high.`);
  },
  met: 'The stirrer sits in the lower part of the vessel, free of the bottom.',
  source: [commonPractice('impeller in the lower half of the batch')],
});

export const stirrerOnShaft = judgement({
  id: 'stirring.stirrer-on-shaft',
  title: 'Stirrer fits the shaft',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { stirrer: ['shaftDiameterM'], shaft: ['diameterM'] },
  conditions: [],
  judge: ({ stirrer, shaft }) =>
    stirrer.shaftDiameterM === shaft.diameterM
      ? met
      : notMet(
          `${stirrer.name} is bored for ${shownQuantity(stirrer.shaftDiameterM, 'm')}; ${shaft.name} has ${shownQuantity(shaft.diameterM, 'm')}.`,
        ),
  met: 'Stirrer and shaft are of one diameter.',
  source: [commonPractice('shaft diameters of the range')],
});

export const shaftInCoupling = judgement({
  id: 'stirring.shaft-in-coupling',
  title: 'Shaft fits the coupling',
  group: 'stirring',
  kind: 'hard',
  unit: 'm',
  of: { coupling: ['shaftDiameterM'], shaft: ['diameterM'] },
  conditions: [],
  judge: ({ coupling, shaft }) =>
    coupling.shaftDiameterM === shaft.diameterM
      ? met
      : notMet(
          `${coupling.name} takes shafts of ${shownQuantity(coupling.shaftDiameterM, 'm')}; ${shaft.name} has ${shownQuantity(shaft.diameterM, 'm')}.`,
        ),
  met: 'Shaft and coupling are of one diameter.',
  source: [commonPractice('shaft diameters of the range')],
});
