import { caution } from '../../figure.js';
import { isFlammable } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const inertingCaution = judgement({
  id: 'caution.inerting',
  title: 'Inert before a flammable gas is let in or out',
  group: 'protection',
  kind: 'caution',
  of: { frame: ['maxSets'] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const gas = media.find((m) => m.role === 'gas' && isFlammable(m));
    if (gas === undefined) return undefined;
    const catalyst = media.some((m) => m.role === 'catalyst')
      ? ' A dry noble-metal catalyst ignites solvent vapour in air: charge it under inert gas.'
      : '';
    return caution(
      `Inert with nitrogen before ${gas.name} is let in and before the vessel is opened, by pressure purges checked for oxygen.${catalyst}`,
    );
  },
  met: 'No flammable gas.',
  source: [commonPractice('inerting for flammable gases')],
});
