import { type Judgement, met } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const gasIntoLiquid = judgement({
  id: 'stirring.gas-into-liquid',
  title: 'Gas is brought into the liquid',
  group: 'stirring',
  kind: 'advice',
  of: { stirrer: ['inducesGas'], gasInlet: ['kind'] },
  conditions: ['media', 'batchVolumeM3'],
  judge: ({ stirrer, gasInlet }, { media, batchVolumeM3 }): Judgement | undefined => {
    const gas = media.find((m) => m.role === 'gas');
    if (gas === undefined || batchVolumeM3 === undefined) return undefined;
    return stirrer.inducesGas || gasInlet?.kind === 'dip tube'
      ? met
      : {
          status: 'met',
          text: `${gas.name} enters above the liquid and goes in through its surface only; where the uptake is to be fast, a hollow-shaft turbine or a dip tube below the stirrer brings it in.`,
        };
  },
  met: 'A hollow shaft or a dip tube brings the gas into the liquid.',
  source: [commonPractice('gas-inducing stirrers and dip tubes for gas uptake')],
});
