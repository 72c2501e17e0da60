import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const staticCharge = judgement({
  id: 'hazardous-area.static-charge',
  title: 'Static charge is led away',
  group: 'hazardous area',
  kind: 'caution',
  of: { vessel: ['construction'] },
  conditions: ['zone'],
  judge: ({ vessel }, { zone }) => {
    if (zone === undefined || zone === 'none') return undefined;
    return vessel.construction === 'metal'
      ? caution(`Earth ${vessel.name}, frame and charging equipment, and bond them before filling.`)
      : caution(
          `${vessel.name} charges electrostatically: earth every metal part, keep conductivity and stirring speed within TRGS 727 / IEC TS 60079-32-1, inert before charging.`,
        );
  },
  met: 'Static charge is led away.',
  source: [commonPractice('lined and glass vessels charge electrostatically; earthing and bonding')],
});
