import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';

export const vacuumSupport = judgement({
  id: 'relief.vacuum-support',
  title: 'Disc stands the vacuum',
  group: 'relief',
  kind: 'hard',
  of: { relief: ['vacuumSupport'] },
  conditions: ['vacuum'],
  judge: ({ relief }, { vacuum }) => {
    if (vacuum !== true) return undefined;
    return relief.vacuumSupport
      ? met
      : notMet(`${relief.name} has no vacuum support, and the vessel is evacuated.`);
  },
  met: 'The disc has a vacuum support.',
  source: [published('EN ISO 4126-2')],
});
