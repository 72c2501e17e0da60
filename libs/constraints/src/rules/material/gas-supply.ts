import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { judgeMaterials } from './corrosion.js';

export const gasSupplyMaterial = judgement({
  id: 'material.gas-supply',
  title: 'Gas supply stands the gas',
  group: 'material',
  kind: 'hard',
  of: { gasSupply: ['wetted', 'maxOutletPressurePaGauge'] },
  conditions: ['media', 'supplyPressurePaGauge'],
  judge: ({ gasSupply }, { media, supplyPressurePaGauge }) =>
    gasSupply === null
      ? undefined
      : judgeMaterials(gasSupply.name, gasSupply.wetted, {
          media: media.filter((m) => m.role === 'gas'),
          pressureMaxPaGauge: Math.max(supplyPressurePaGauge ?? 0, gasSupply.maxOutletPressurePaGauge),
        }),
  met: 'Every wetted material of the gas supply is suitable for the gas at room temperature.',
  source: [
    published('corrosion rows, each with its own source'),
    commonPractice('the supply is as cold as the room'),
  ],
});
