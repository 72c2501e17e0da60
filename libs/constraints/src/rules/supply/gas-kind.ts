import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const gasKind = judgement({
  id: 'supply.gas-kind',
  title: 'Gas supply is made for the gas',
  group: 'supply',
  kind: 'hard',
  of: { gasSupply: ['gases'] },
  conditions: ['gases'],
  judge: ({ gasSupply }, { gases }) => {
    if (gasSupply === null || gases.length === 0 || gasSupply.gases.includes('any')) return undefined;
    const refused = gases.filter(
      (gas) => !gasSupply.gases.some((g) => g.toLowerCase() === gas.toLowerCase()),
    );
    return refused.length === 0 ? met : notMet(`${gasSupply.name} is not made for ${refused.join(' and ')}.`);
  },
  met: 'The gas supply is made for the gas.',
  source: [commonPractice('gas supplies are cleaned and sealed for their gas')],
});
