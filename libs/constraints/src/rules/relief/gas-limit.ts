import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const gasLimitNeeded = judgement({
  id: 'relief.gas-limit',
  title: 'Gas supply cannot exceed PS of the set',
  group: 'relief',
  kind: 'hard',
  unit: 'Pa',
  of: {
    vessel: ['rating'],
    gasSupply: ['maxOutletPressurePaGauge'],
    gasLimit: ['setPressurePaGauge', 'kind'],
  },
  conditions: [],
  judge: ({ vessel, gasSupply, gasLimit }) => {
    if (gasSupply === null) return undefined;
    const ps = vessel.rating?.maxPressurePaGauge ?? 0;
    const limit = Math.min(
      gasSupply.maxOutletPressurePaGauge,
      gasLimit?.setPressurePaGauge ?? Number.POSITIVE_INFINITY,
    );
    const supply = `${gasSupply.name} delivers up to ${shownQuantity(gasSupply.maxOutletPressurePaGauge, 'Pa', 'up')}`;
    if (limit <= ps) {
      const kept =
        gasLimit === null
          ? ''
          : `; ${gasLimit.name} lets through at most ${shownQuantity(gasLimit.setPressurePaGauge, 'Pa', 'up')}`;
      return {
        ...met,
        text: `${supply}${kept}: no more than PS ${shownQuantity(ps, 'Pa', 'down')} of ${vessel.name}.`,
      };
    }
    return gasLimit === null
      ? notMet(
          `${supply}; ${vessel.name} has PS ${shownQuantity(ps, 'Pa', 'down')}: a pressure limiter or an own connector has to keep the supply from it.`,
        )
      : notMet(
          `${gasLimit.name} lets through ${shownQuantity(gasLimit.setPressurePaGauge, 'Pa', 'up')}; ${vessel.name} has PS ${shownQuantity(ps, 'Pa', 'down')}.`,
        );
  },
  met: 'Supply or its limiter stays at PS of the set or below, so that no shared source can exceed it.',
  source: [commonPractice('no shared source may exceed PS of the mounted set')],
});
