import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const fluidGroupOfVapour = judgement({
  id: 'caution.fluid-group-of-vapour',
  title: 'Fluid group of the vapour',
  group: 'papers',
  kind: 'advice',
  of: { vessel: ['family'] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const acid = media.find((m) => m.massFraction !== undefined && /chlor|hydrogen chloride/i.test(m.name));
    return acid === undefined
      ? undefined
      : caution(
          `${acid.name}: the vapour over the solution holds hydrogen chloride gas (H331), so whether the fluid counts to group 1 or 2 of the PED has to be settled with the notified body.`,
        );
  },
  met: 'The fluid group is clear.',
  source: [commonPractice('hazard class of the vapour over a solution')],
});
