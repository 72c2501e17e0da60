import type { ConditionMedium } from '../../conditions.js';
import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

const hydrogenChloride = '7647-01-0';

/** Hydrochloric acid by its name, or hydrogen chloride of which a share below 1 makes it a solution. */
const isHydrochloricAcid = ({ name, cas, massFraction }: ConditionMedium): boolean =>
  /hydrochloric acid/i.test(name) ||
  (massFraction !== undefined &&
    massFraction < 1 &&
    (cas === hydrogenChloride || /hydrogen chloride/i.test(name)));

export const fluidGroupOfVapour = judgement({
  id: 'caution.fluid-group-of-vapour',
  title: 'Fluid group of the vapour',
  group: 'papers',
  kind: 'advice',
  of: { vessel: ['family'] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const acid = media.find(isHydrochloricAcid);
    return acid === undefined
      ? undefined
      : caution(
          `${acid.name}: the vapour over the solution holds hydrogen chloride gas (H331), so whether the fluid counts to group 1 or 2 of the PED has to be settled with the notified body.`,
        );
  },
  met: 'The fluid group is clear.',
  source: [commonPractice('hazard class of the vapour over a solution')],
});
