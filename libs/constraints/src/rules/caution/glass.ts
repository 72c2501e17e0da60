import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const glassUnderGas = judgement({
  id: 'caution.glass-under-gas',
  title: 'Stored energy of glass under gas pressure',
  group: 'protection',
  kind: 'caution',
  of: { vessel: ['construction'] },
  conditions: [],
  judge: ({ vessel }) =>
    vessel.construction === 'glass'
      ? caution(
          `${vessel.name}: gas under pressure in glass stores energy. Run it only behind the closed shield, inspect the glass before each run, and never touch it under pressure.`,
        )
      : undefined,
  met: 'No glass under gas pressure.',
  source: [commonPractice('stored energy of glass under gas pressure asks for a barrier')],
});
