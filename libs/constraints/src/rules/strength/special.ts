import type { Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';

export const specialVesselRule = judgement({
  id: 'strength.special-vessel',
  title: 'Special vessel is reviewed and released',
  group: 'strength',
  kind: 'hard',
  of: { vessel: ['special'] },
  conditions: [],
  judge: ({ vessel }): Judgement | undefined =>
    vessel.special === true
      ? {
          status: 'outside standard range',
          text: `${vessel.name} is made for this system: walls are computed, and an engineer has to review and release it.`,
        }
      : undefined,
  met: 'A vessel of the standard range.',
  source: [
    published('en-13445-3:2021 §7, annex with the thick-wall method above e/De = 0.16'),
    commonPractice('specials need engineering review'),
  ],
});
