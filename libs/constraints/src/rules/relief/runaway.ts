import { notDecidable } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const runaway = judgement({
  id: 'relief.runaway',
  title: 'Relief of a runaway reaction',
  group: 'relief',
  kind: 'hard',
  of: { relief: ['areaM2'] },
  conditions: ['exothermic', 'selfReactive', 'calorimetry'],
  judge: ({ relief }, { exothermic, selfReactive, calorimetry }) => {
    if (exothermic !== true && selfReactive !== true) return undefined;
    return calorimetry === true
      ? notDecidable(
          `${relief.name}: the relief area of the reaction has to be sized from the calorimetric data by a specialist; gas, fire and expansion areas are partial answers.`,
          'relief sizing from calorimetric data',
        )
      : notDecidable(
          `${relief.name}: the reaction gives heat, so relief is not decidable without calorimetric data; gas, fire and expansion areas are partial answers.`,
          'process.calorimetry',
        );
  },
  met: 'The reaction gives no heat that relief would have to carry away.',
  source: [commonPractice('runaway reactions need test data (DIERS methodology)')],
});
