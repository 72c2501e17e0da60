import { isAtMost } from '../../compare.js';
import { met, notMet } from '../../figure.js';
import { isToxicGas } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const ventLineNeeded = judgement({
  id: 'relief.vent-line',
  title: 'Disc relieves to a safe place',
  group: 'relief',
  kind: 'hard',
  of: { relief: ['areaM2'], ventLine: ['diameterM', 'kind'] },
  conditions: ['media'],
  judge: ({ relief, ventLine }, { media }) => {
    if (ventLine === null)
      return notMet(`${relief.name} would relieve into the room: a vent line to a safe place is needed.`);
    const discDiameterM = Math.sqrt((4 * relief.areaM2) / Math.PI);
    if (!isAtMost(discDiameterM, ventLine.diameterM)) {
      return notMet(
        `${ventLine.name} is narrower (${shownQuantity(ventLine.diameterM, 'm', 'down')}) than the disc (${shownQuantity(discDiameterM, 'm', 'up')}).`,
      );
    }
    const toxic = media.find(isToxicGas);
    return toxic !== undefined && ventLine.kind !== 'to scrubber'
      ? notMet(`${toxic.name} is toxic: the vent line has to lead to a scrubber, not ${ventLine.kind}.`)
      : met;
  },
  met: 'The vent line is at least as wide as the disc and leads to a safe place.',
  source: [
    commonPractice('vent line to a safe place, never narrower than the disc; toxic gas through a scrubber'),
  ],
});
