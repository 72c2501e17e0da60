import { materialGrade } from '@flangewise/engineering';
import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Two names mean the same material when the tables find the same grade, or the names are equal. */
const isSame = (a: string, b: string): boolean => {
  if (a.toLowerCase() === b.toLowerCase()) return true;
  const [first, second] = [materialGrade(a), materialGrade(b)];
  return first.ok && second.ok && first.value.key === second.value.key;
};

export const materialWish = judgement({
  id: 'wish.material',
  title: 'Wetted material is the wished one',
  group: 'wish',
  kind: 'hard',
  of: { vessel: ['material'] },
  conditions: ['material'],
  judge: ({ vessel }, { material }) => {
    if (material === undefined) return undefined;
    return isSame(vessel.material, material)
      ? met
      : notMet(`${material} is wished for; ${vessel.name} touches the product with ${vessel.material}.`);
  },
  met: 'The vessel is of the material that was wished for.',
  source: [commonPractice('wish of the client')],
});
