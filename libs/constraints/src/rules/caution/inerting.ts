import { caution } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

const flammableGases: readonly string[] = [
  'hydrogen',
  'methane',
  'ethane',
  'ethylene',
  'propylene',
  'carbon monoxide',
  '1,3-butadiene',
  'ethylene oxide',
];

export const inertingCaution = judgement({
  id: 'caution.inerting',
  title: 'Inert before a flammable gas is let in or out',
  group: 'protection',
  kind: 'caution',
  of: { frame: ['maxSets'] },
  conditions: ['gases', 'media'],
  judge: (_, { gases, media }) => {
    const gas = gases.find((g) => flammableGases.includes(g.toLowerCase()));
    if (gas === undefined) return undefined;
    const catalyst = media.some((m) => m.role === 'catalyst')
      ? ' A dry noble-metal catalyst ignites solvent vapour in air: charge it under inert gas.'
      : '';
    return caution(
      `Inert with nitrogen before ${gas} is let in and before the vessel is opened, by pressure purges checked for oxygen.${catalyst}`,
    );
  },
  met: 'No flammable gas.',
  source: [commonPractice('inerting for flammable gases')],
});
