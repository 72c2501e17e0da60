import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const gasInletNeeded = judgement({
  id: 'supply.gas-inlet',
  title: 'Gas has an inlet and a supply',
  group: 'supply',
  kind: 'hard',
  of: { gasInlet: ['kind'], gasSupply: ['kind'] },
  conditions: ['gases', 'inerting'],
  judge: ({ gasInlet, gasSupply }, { gases, inerting }) => {
    if (gases.length === 0 && inerting !== true) return undefined;
    const gas = gases[0] ?? 'inert gas';
    if (gasInlet === null) return notMet(`${gas} is charged, and no gas inlet is chosen.`);
    return gasSupply === null ? notMet(`${gas} is charged, and no gas supply is chosen.`) : met;
  },
  met: 'The gas has an inlet and a supply.',
  source: [commonPractice('gas needs an inlet and a supply')],
});
