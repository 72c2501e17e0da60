import { isAtMost } from '../../compare.js';
import { caution, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const shieldNeeded = judgement({
  id: 'protection.shield',
  title: 'A glass vessel stands behind a shield that takes it',
  group: 'protection',
  kind: 'hard',
  of: {
    vessel: ['construction', 'geometry', 'jacket', 'depthM'],
    shield: ['maxDiameterM', 'maxHeightM', 'interlock'],
  },
  conditions: [],
  judge: ({ vessel, shield }) => {
    if (shield === null) {
      return vessel.construction === 'glass'
        ? notMet(`${vessel.name} holds gas under pressure in glass: a shield is compulsory.`)
        : undefined;
    }
    const { geometry, jacket, depthM } = vessel;
    const across = Math.max(
      geometry.flangeOuterDiameterM,
      geometry.innerDiameterM + 2 * geometry.wallThicknessM + (jacket === null ? 0 : 2 * jacket.gapM),
    );
    if (!isAtMost(across, shield.maxDiameterM)) {
      return notMet(
        `${shield.name} takes vessels up to ${shownQuantity(shield.maxDiameterM, 'm')} across; ${vessel.name} measures ${shownQuantity(across, 'm', 'up')}.`,
      );
    }
    if (!isAtMost(depthM, shield.maxHeightM)) {
      return notMet(
        `${shield.name} takes vessels up to ${shownQuantity(shield.maxHeightM, 'm')} high; ${vessel.name} is ${shownQuantity(depthM, 'm', 'up')} deep.`,
      );
    }
    return shield.interlock
      ? met
      : caution(
          `${shield.name} has no interlock: a rule of the house has to keep its door shut while there is pressure in ${vessel.name}.`,
        );
  },
  met: 'The shield stands between the vessel and people.',
  source: [commonPractice('a shield is compulsory for glass vessels under pressure')],
});
