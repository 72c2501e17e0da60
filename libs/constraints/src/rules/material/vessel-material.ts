import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const vesselMaterial = judgement({
  id: 'material.vessel',
  title: 'Vessel is made of the wetted material',
  group: 'material',
  kind: 'hard',
  of: { vessel: ['material', 'construction'], material: ['material', 'construction'] },
  conditions: [],
  judge: ({ vessel, material }) =>
    vessel.material === material.material && vessel.construction === material.construction
      ? met
      : notMet(`${vessel.name} is of ${vessel.material}, not of ${material.name}.`),
  met: 'The vessel is of the chosen wetted material.',
  source: [commonPractice('one wetted material through the vessel')],
});
