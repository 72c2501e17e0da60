import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const closureBore = judgement({
  id: 'closure.bore',
  title: 'Closure fits the bore of the vessel',
  group: 'closure',
  kind: 'hard',
  of: { vessel: ['bore'], closure: ['bore'] },
  conditions: [],
  judge: ({ vessel, closure }) =>
    vessel.bore === closure.bore
      ? met
      : notMet(`${closure.name} is made for bore ${closure.bore}; ${vessel.name} has bore ${vessel.bore}.`),
  met: 'Closure and vessel have the same sealing bore.',
  source: [commonPractice('sealing bores of the range')],
});
