import { known, notApplicable } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Free space to swing the vessel out below the internals [m]. */
export const clearanceM = 0.03;

export const liftStroke = comparison({
  id: 'lifting.stroke',
  title: 'Stroke clears the internals',
  group: 'lifting',
  kind: 'hard',
  unit: 'm',
  utilisation: 'ratio',
  demandOf: { shaft: ['lengthM'] },
  limitOf: { lift: ['strokeM'] },
  conditions: [],
  demand: ({ shaft }) => known(shaft.lengthM + clearanceM),
  limit: ({ lift }) => (lift === null ? notApplicable : known(lift.strokeM)),
  say: ({ demand, limit, parts }) =>
    `${parts.shaft.name} with its clearance needs a stroke of ${demand}; ${parts.lift?.name ?? 'the lift'} has ${limit}.`,
  source: [commonPractice('stroke over the internals')],
});
