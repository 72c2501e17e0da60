import { impellerTypes } from '@flangewise/engineering';
import { met, notDecidable, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Kinds of stirrers that a wish in words can mean. */
const meantBy = (wish: string): readonly string[] => {
  const asked = wish.trim().toLowerCase();
  return asked === '' ? [] : impellerTypes.filter((kind) => kind.includes(asked) || asked.includes(kind));
};

export const impellerWish = judgement({
  id: 'wish.impeller',
  title: 'Stirrer is of the wished kind',
  group: 'wish',
  kind: 'hard',
  of: { stirrer: ['impeller'] },
  conditions: ['impeller'],
  judge: ({ stirrer }, { impeller }) => {
    if (impeller === undefined) return undefined;
    const meant = meantBy(impeller);
    if (meant.length === 0) {
      return notDecidable(
        `“${impeller}” is wished for; known kinds are ${impellerTypes.join(', ')}.`,
        'requirements.impeller',
      );
    }
    return meant.includes(stirrer.impeller)
      ? met
      : notMet(`“${impeller}” is wished for; ${stirrer.name} is a ${stirrer.impeller}.`);
  },
  met: 'The stirrer is of the kind that was wished for.',
  source: [commonPractice('wish of the client')],
});
