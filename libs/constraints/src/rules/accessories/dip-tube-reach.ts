import type { ItemOf } from '@flangewise/model';
import { type Judgement, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** A dip tube ends between this share of the depth and the bottom. */
const shallowest = 0.5;

const reachOf = (
  vessel: Pick<ItemOf<'vessel'>, 'depthM' | 'name'>,
  tube: { name: string; reachM?: number | undefined },
): Judgement | undefined => {
  if (tube.reachM === undefined) return undefined;
  const shown = `${tube.name} reaches ${shownQuantity(tube.reachM, 'm')}; ${vessel.name} is ${shownQuantity(vessel.depthM, 'm')} deep`;
  if (tube.reachM >= vessel.depthM) return notMet(`${shown}: it would stand on the bottom.`);
  return tube.reachM < shallowest * vessel.depthM ? notMet(`${shown}: it may not reach the liquid.`) : met;
};

export const gasTubeReach = judgement({
  id: 'accessories.gas-tube-reach',
  title: 'Gas dip tube reaches into the liquid',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['depthM'], gasInlet: ['reachM'] },
  conditions: [],
  judge: ({ vessel, gasInlet }) => (gasInlet === null ? undefined : reachOf(vessel, gasInlet)),
  met: 'The gas dip tube ends in the lower half of the vessel.',
  source: [commonPractice('a dip tube ends between half the depth and the bottom')],
});

export const samplingTubeReach = judgement({
  id: 'accessories.sampling-tube-reach',
  title: 'Sampling tube reaches into the liquid',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['depthM'], sampling: ['reachM'] },
  conditions: [],
  judge: ({ vessel, sampling }) => (sampling === null ? undefined : reachOf(vessel, sampling)),
  met: 'The sampling tube ends in the lower half of the vessel.',
  source: [commonPractice('a dip tube ends between half the depth and the bottom')],
});
