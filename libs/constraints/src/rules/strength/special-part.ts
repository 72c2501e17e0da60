import type { Judgement } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';

const reviewed = (name: string, computed: string): Judgement => ({
  status: 'outside standard range',
  text: `${name} is made for this system: ${computed}, and an engineer has to review and release it.`,
});

export const specialCoverRule = judgement({
  id: 'strength.special-cover',
  title: 'Special cover is reviewed and released',
  group: 'strength',
  kind: 'hard',
  of: { cover: ['special'] },
  conditions: [],
  judge: ({ cover }): Judgement | undefined =>
    cover.special === true ? reviewed(cover.name, 'its thickness is computed for its ports') : undefined,
  met: 'A cover of the standard range.',
  source: [published('en-13445-3:2021 §10'), commonPractice('specials need engineering review')],
});

export const specialShaftRule = judgement({
  id: 'stirring.special-shaft',
  title: 'Special shaft is reviewed and released',
  group: 'stirring',
  kind: 'hard',
  of: { shaft: ['special'] },
  conditions: [],
  judge: ({ shaft }): Judgement | undefined =>
    shaft.special === true ? reviewed(shaft.name, 'its mass and critical speed are computed') : undefined,
  met: 'A shaft of the standard range.',
  source: [commonPractice('specials need engineering review')],
});
