import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const sealBore = judgement({
  id: 'closure.seal-bore',
  title: 'Seal fits the bore of the vessel',
  group: 'closure',
  kind: 'hard',
  of: { vessel: ['bore'], seal: ['bore'] },
  conditions: [],
  judge: ({ vessel, seal }) =>
    vessel.bore === seal.bore
      ? met
      : notMet(`${seal.name} is made for bore ${seal.bore}; ${vessel.name} has bore ${vessel.bore}.`),
  met: 'Seal and vessel have the same sealing bore.',
  source: [commonPractice('sealing bores of the range')],
});
