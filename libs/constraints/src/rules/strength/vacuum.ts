import { setSlots } from '@flangewise/model';
import { met, notMet } from '../../figure.js';
import { partRule } from '../../rule.js';
import { published } from '../../source.js';

export const vacuumProof = partRule({
  id: 'strength.vacuum',
  title: 'Every part stands full vacuum',
  group: 'strength',
  kind: 'hard',
  each: setSlots.filter((slot) => slot !== 'ventLine' && slot !== 'gasLimit'),
  reads: ['rating'],
  beside: {},
  conditions: ['vacuum'],
  judge: (part, { vacuum }) => {
    if (vacuum !== true || part.rating === undefined) return undefined;
    return part.rating.vacuum ? met : notMet(`${part.name} does not stand full vacuum, which is asked.`);
  },
  met: 'Every part stands full vacuum.',
  source: [published('en-13445-3:2021 §8')],
});
