import { caution } from '../../figure.js';
import { isToxicGas } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const toxicGas = judgement({
  id: 'caution.toxic-gas',
  title: 'Toxic gas',
  group: 'protection',
  kind: 'caution',
  of: { frame: ['maxSets'] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const gas = media.find(isToxicGas);
    return gas === undefined
      ? undefined
      : caution(
          `${gas.name} is toxic: ventilated enclosure, gas detection, scrubber on vent and relief, breathing protection at hand; leak-test before each run.`,
        );
  },
  met: 'No toxic gas.',
  source: [commonPractice('toxic gases: enclosure, detection, scrubber')],
});
