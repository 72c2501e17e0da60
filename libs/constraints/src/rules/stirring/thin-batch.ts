import { caution, met } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const thinBatch = judgement({
  id: 'stirring.thin-batch',
  title: 'Stirrer moves the batch at its thinnest',
  group: 'stirring',
  kind: 'caution',
  unit: 'Pa.s',
  of: { stirrer: ['minViscosityPaS'] },
  conditions: ['viscosityMinPaS'],
  judge: ({ stirrer }, { viscosityMinPaS }) => {
    if (viscosityMinPaS === undefined || stirrer.minViscosityPaS === 0) return undefined;
    return viscosityMinPaS >= stirrer.minViscosityPaS
      ? met
      : caution(
          `${stirrer.name} is meant for batches from ${shownQuantity(stirrer.minViscosityPaS, 'Pa.s')} on; at ${shownQuantity(viscosityMinPaS, 'Pa.s')} it turns the liquid round and mixes it slowly from top to bottom.`,
        );
  },
  met: 'The batch is never thinner than the stirrer is meant for.',
  source: [commonPractice('usual viscosities of impeller types')],
});
