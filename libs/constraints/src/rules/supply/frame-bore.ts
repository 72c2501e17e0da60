import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const frameBore = judgement({
  id: 'supply.frame-bore',
  title: 'Frame takes the vessel',
  group: 'supply',
  kind: 'hard',
  of: { vessel: ['bore'], frame: ['bores'] },
  conditions: [],
  judge: ({ vessel, frame }) =>
    frame.bores.includes(vessel.bore)
      ? met
      : notMet(`${frame.name} takes bores ${frame.bores.join(', ')}; ${vessel.name} has ${vessel.bore}.`),
  met: 'The frame takes the vessel.',
  source: [commonPractice('bores of the frames of the range')],
});
