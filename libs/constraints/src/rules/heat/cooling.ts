import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const coolingNeeded = judgement({
  id: 'heat.cooling',
  title: 'Reaction heat has somewhere to go',
  group: 'heat',
  kind: 'hard',
  of: { coil: ['areaM2'], circulator: ['coolingPowerW'] },
  conditions: ['exothermic'],
  judge: ({ coil, circulator }, { exothermic }) => {
    if (exothermic !== true) return undefined;
    return coil === null && circulator === null
      ? notMet('The reaction gives heat, and neither coil nor jacket takes it away.')
      : met;
  },
  met: 'A coil or a jacket takes the heat away.',
  source: [commonPractice('cooling where the reaction gives heat')],
});
