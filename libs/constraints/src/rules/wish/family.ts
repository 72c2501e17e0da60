import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const familyWish = judgement({
  id: 'wish.family',
  title: 'Vessel belongs to a wished family',
  group: 'wish',
  kind: 'hard',
  of: { vessel: ['family'] },
  conditions: ['families'],
  judge: ({ vessel }, { families }) => {
    if (families === undefined || families.length === 0) return undefined;
    return families.some((f) => f.toLowerCase() === vessel.family.toLowerCase())
      ? met
      : notMet(`Only ${families.join(' or ')} is asked for; ${vessel.name} belongs to ${vessel.family}.`);
  },
  met: 'The vessel belongs to a family that was asked for.',
  source: [commonPractice('wish of the client')],
});
