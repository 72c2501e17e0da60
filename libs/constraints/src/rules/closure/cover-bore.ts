import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const coverBore = judgement({
  id: 'closure.cover-bore',
  title: 'Cover fits the bore of the vessel',
  group: 'closure',
  kind: 'hard',
  of: { vessel: ['bore'], cover: ['bore'] },
  conditions: [],
  judge: ({ vessel, cover }) =>
    vessel.bore === cover.bore
      ? met
      : notMet(`${cover.name} is made for bore ${cover.bore}; ${vessel.name} has bore ${vessel.bore}.`),
  met: 'Cover and vessel have the same sealing bore.',
  source: [commonPractice('sealing bores of the range')],
});
