import { caution } from '../../figure.js';
import { isFlammable, isOxidiser } from '../../media-hazards.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const explosiveMixture = judgement({
  id: 'caution.explosive-mixture',
  title: 'Oxidiser over something that burns',
  group: 'protection',
  kind: 'caution',
  of: { frame: ['maxSets'] },
  conditions: ['media'],
  judge: (_, { media }) => {
    const oxidiser = media.find((m) => isOxidiser(m) && m.role !== 'inert gas');
    const fuel = media.find((m) => isFlammable(m) && !isOxidiser(m));
    return oxidiser === undefined || fuel === undefined
      ? undefined
      : caution(
          `${oxidiser.name} over ${fuel.name}: the gas space can explode, and at pressure its limits widen. Show by data at pressure and temperature that it stays outside them, monitor the oxygen, and size the vessel or its relief for an explosion where it cannot be excluded.`,
        );
  },
  met: 'No oxidiser over something that burns.',
  source: [commonPractice('explosion limits widen with pressure and oxygen')],
});
