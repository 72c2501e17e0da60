import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';

export const interlock = judgement({
  id: 'closure.interlock',
  title: 'A quick-acting closure has a pressure interlock',
  group: 'closure',
  kind: 'hard',
  of: { closure: ['kind', 'interlock'] },
  conditions: [],
  judge: ({ closure }) => {
    if (closure.kind === 'bolted') return undefined;
    return closure.interlock
      ? met
      : notMet(`${closure.name} could be opened under pressure: a quick-acting closure needs an interlock.`);
  },
  met: 'The closure cannot be opened until the absence of pressure is proved; it vents to the vent line, never at the operator.',
  source: [published('2014/68/EU annex I 2.3'), commonPractice('interlock of quick-acting closures')],
});
