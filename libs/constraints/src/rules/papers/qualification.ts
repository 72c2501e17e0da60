import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const qualificationWish = judgement({
  id: 'papers.qualification',
  title: 'Qualification papers are included',
  group: 'papers',
  kind: 'hard',
  of: { qualification: ['contains'] },
  conditions: ['qualificationPapers'],
  judge: ({ qualification }, { qualificationPapers }) =>
    qualificationPapers !== true
      ? undefined
      : qualification === null
        ? notMet('Qualification papers are asked for, and none are chosen.')
        : met,
  met: 'Qualification papers are included.',
  source: [commonPractice('installation and operation qualification')],
});
