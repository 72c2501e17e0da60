import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** A vessel of the range counts as "1 L" from a little below to half as much again. */
const below = 0.95;
const above = 1.5;

export const vesselSize = judgement({
  id: 'volume.vessel-size',
  title: 'Vessel is of the wished size',
  group: 'volume',
  kind: 'hard',
  unit: 'm3',
  of: { vessel: ['nominalVolumeL'] },
  conditions: ['vesselVolumeM3'],
  judge: ({ vessel }, { vesselVolumeM3 }) => {
    if (vesselVolumeM3 === undefined) return undefined;
    const nominal = vessel.nominalVolumeL / 1000;
    const fits = isAtMost(vesselVolumeM3 * below, nominal) && isAtMost(nominal, vesselVolumeM3 * above);
    return fits
      ? met
      : notMet(
          `${vessel.name} holds ${shownQuantity(nominal, 'm3')}; a vessel of ${shownQuantity(vesselVolumeM3, 'm3')} is asked for (up to half as much again is offered).`,
        );
  },
  met: 'The vessel is of the size that was asked for.',
  source: [commonPractice('nominal volumes of the range')],
});
