import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const liningPermeation = judgement({
  id: 'caution.lining-permeation',
  title: 'Vapour and gas go through a lining',
  group: 'material',
  kind: 'caution',
  of: { vessel: ['construction', 'material', 'carrier'] },
  conditions: [],
  judge: ({ vessel }) =>
    vessel.construction === 'lined'
      ? caution(
          `${vessel.name}: ${vessel.material} lets gas and vapour through to ${vessel.carrier ?? 'the wall behind it'}. Keep the vent holes behind the lining open and watch them, release pressure slowly, keep vacuum away, and test the lining for sparks at every inspection.`,
        )
      : undefined,
  met: 'No lining.',
  source: [commonPractice('permeation through polymer linings')],
});
