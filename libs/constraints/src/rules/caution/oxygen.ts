import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const oxygenService = judgement({
  id: 'caution.oxygen-service',
  title: 'Oxygen service',
  group: 'protection',
  kind: 'caution',
  of: { vessel: ['material'] },
  conditions: ['gases'],
  judge: ({ vessel }, { gases }) =>
    gases.some((g) => g.toLowerCase() === 'oxygen')
      ? caution(
          `Oxygen: every part free of oil and grease, seals and ${vessel.material} judged for oxygen at pressure, valves opened slowly; autoignition data in air do not hold.`,
        )
      : undefined,
  met: 'No oxygen service.',
  source: [commonPractice('oxygen service asks for cleanliness and material')],
});
