import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const bottomOutletWish = judgement({
  id: 'wish.bottom-outlet',
  title: 'The vessel empties through the bottom',
  group: 'wish',
  kind: 'hard',
  of: { bottomValve: ['kind'] },
  conditions: ['bottomOutlet', 'viscosityMaxPaS'],
  judge: ({ bottomValve }, { bottomOutlet, viscosityMaxPaS }) => {
    if (bottomOutlet !== true) return undefined;
    if (bottomValve === null)
      return notMet('Emptying through the bottom is asked for, and no bottom valve is chosen.');
    const thick = viscosityMaxPaS !== undefined && viscosityMaxPaS > 1;
    return thick && bottomValve.kind !== 'flush plug'
      ? notMet(
          `${bottomValve.name} leaves a pocket under the vessel in which a thick batch stays; a flush valve is needed.`,
        )
      : met;
  },
  met: 'The vessel empties through a bottom valve.',
  source: [commonPractice('thick batches ask for a flush bottom valve')],
});
