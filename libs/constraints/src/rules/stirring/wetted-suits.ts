import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const stirrerMaterial = judgement({
  id: 'stirring.material',
  title: 'Shaft and stirrer are of one material',
  group: 'stirring',
  kind: 'hard',
  of: { stirrer: ['material'], shaft: ['material'] },
  conditions: [],
  judge: ({ stirrer, shaft }) =>
    stirrer.material === shaft.material
      ? met
      : notMet(`${stirrer.name} is of ${stirrer.material}, ${shaft.name} of ${shaft.material}.`),
  met: 'Shaft and stirrer are of one material.',
  source: [commonPractice('no galvanic pairs on the shaft')],
});
