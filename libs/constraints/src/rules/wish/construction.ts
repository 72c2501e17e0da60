import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const constructionWish = judgement({
  id: 'wish.construction',
  title: 'Vessel is of the wished kind',
  group: 'wish',
  kind: 'hard',
  of: { vessel: ['construction'] },
  conditions: ['construction'],
  judge: ({ vessel }, { construction }) => {
    if (construction === undefined) return undefined;
    return vessel.construction === construction
      ? met
      : notMet(`A ${construction} vessel is asked for; ${vessel.name} is ${vessel.construction}.`);
  },
  met: 'The vessel is of the kind that was asked for.',
  source: [commonPractice('wish of the client')],
});
