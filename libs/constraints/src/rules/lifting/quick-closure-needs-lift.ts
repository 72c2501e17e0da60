import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const quickClosureNeedsLift = judgement({
  id: 'lifting.closure-needs-lift',
  title: 'A quick-acting closure comes with a lift',
  group: 'lifting',
  kind: 'hard',
  of: { closure: ['needsLift'], lift: ['kind'] },
  conditions: [],
  judge: ({ closure, lift }) => {
    if (!closure.needsLift) return undefined;
    return lift === null ? notMet(`${closure.name} is sold with a lift, and none is chosen.`) : met;
  },
  met: 'The quick-acting closure has its lift.',
  source: [commonPractice('quick-acting closures are sold with a lift')],
});
