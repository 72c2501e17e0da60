import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const bushing = judgement({
  id: 'stirring.bushing',
  title: 'Coupling fits the bushing of the cover',
  group: 'stirring',
  kind: 'hard',
  of: { cover: ['bushing'], coupling: ['bushing'] },
  conditions: [],
  judge: ({ cover, coupling }) =>
    cover.bushing === coupling.bushing
      ? met
      : notMet(
          `${coupling.name} needs a bushing of size ${coupling.bushing}; ${cover.name} has ${cover.bushing}.`,
        ),
  met: 'Coupling and cover have the same bushing.',
  source: [commonPractice('bushings of the range')],
});
