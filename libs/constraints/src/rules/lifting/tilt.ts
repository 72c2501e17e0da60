import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const tilt = judgement({
  id: 'lifting.tilt',
  title: 'The lift tilts where tilting is asked',
  group: 'lifting',
  kind: 'hard',
  of: { lift: ['tilts'] },
  conditions: ['tilt'],
  judge: ({ lift }, { tilt: asked }) => {
    if (asked !== true) return undefined;
    return lift?.tilts === true
      ? met
      : notMet(`${lift?.name ?? 'No lift'} does not tilt; tilting is asked for emptying and cleaning.`);
  },
  met: 'The lift tilts the vessel.',
  source: [commonPractice('tilt for emptying and cleaning')],
});
