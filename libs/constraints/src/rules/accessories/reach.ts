import type { ItemOf } from '@flangewise/model';
import { type Judgement, met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

/** What reaches into the liquid ends between this share of the depth and the bottom. */
const shallowest = 0.5;

const reachOf = (
  vessel: Pick<ItemOf<'vessel'>, 'depthM' | 'name'>,
  part: { readonly name: string; readonly reachM?: number | undefined } | null,
): Judgement | undefined => {
  if (part?.reachM === undefined) return undefined;
  const shown = `${part.name} reaches ${shownQuantity(part.reachM, 'm')}; ${vessel.name} is ${shownQuantity(vessel.depthM, 'm')} deep`;
  if (part.reachM >= vessel.depthM) return notMet(`${shown}: it would stand on the bottom.`);
  return part.reachM < shallowest * vessel.depthM ? notMet(`${shown}: it may not reach the liquid.`) : met;
};

export const thermowellReach = judgement({
  id: 'accessories.thermowell-reach',
  title: 'Thermowell reaches into the vessel and not to its bottom',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['depthM'], temperatureProbe: ['reachM'] },
  conditions: [],
  judge: ({ vessel, temperatureProbe }) => reachOf(vessel, temperatureProbe),
  met: 'The thermowell ends in the lower half of the vessel.',
  source: [commonPractice('a thermowell ends between half the depth and the bottom')],
});

export const gasTubeReach = judgement({
  id: 'accessories.gas-tube-reach',
  title: 'Gas dip tube reaches into the liquid',
  group: 'accessories',
  kind: 'hard',
  of: { vessel: ['depthM'], gasInlet: ['reachM'] },
  conditions: [],
  judge: ({ vessel, gasInlet }) => reachOf(vessel, gasInlet),
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
  judge: ({ vessel, sampling }) => reachOf(vessel, sampling),
  met: 'The sampling tube ends in the lower half of the vessel.',
  source: [commonPractice('a dip tube ends between half the depth and the bottom')],
});
