import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const viewInside = judgement({
  id: 'wish.view-inside',
  title: 'One can see inside',
  group: 'wish',
  kind: 'hard',
  of: { vessel: ['construction'], sightGlass: ['diameterM'] },
  conditions: ['seeInside'],
  judge: ({ vessel, sightGlass }, { seeInside }) => {
    if (seeInside !== true) return undefined;
    return vessel.construction === 'glass' || sightGlass !== null
      ? met
      : notMet(`${vessel.name} is not of glass and has no sight glass; a view inside is asked for.`);
  },
  met: 'The batch can be seen.',
  source: [commonPractice('wish of the client')],
});
