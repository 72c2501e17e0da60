import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const coilFits = judgement({
  id: 'heat.coil-fits',
  title: 'Coil fits bore and depth of the vessel',
  group: 'heat',
  kind: 'hard',
  of: { vessel: ['bore', 'depthM'], coil: ['bore', 'reachM'] },
  conditions: [],
  judge: ({ vessel, coil }) => {
    if (coil === null) return undefined;
    if (coil.bore !== vessel.bore)
      return notMet(
        `${coil.name} is made for bore ${String(coil.bore)}; ${vessel.name} has bore ${String(vessel.bore)}.`,
      );
    return (coil.reachM ?? 0) < vessel.depthM
      ? met
      : notMet(`${coil.name} reaches deeper than ${vessel.name}.`);
  },
  met: 'The coil fits.',
  source: [commonPractice('coils of the range')],
});
