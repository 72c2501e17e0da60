import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

/** Impellers that sweep the wall leave no room for baffles. */
const wallImpellers: readonly string[] = ['anchor', 'double helical ribbon', 'magnetic bar'];

export const bafflesFit = judgement({
  id: 'stirring.baffles',
  title: 'Baffles fit vessel and stirrer',
  group: 'stirring',
  kind: 'hard',
  of: { vessel: ['bore'], stirrer: ['impeller'], baffles: ['bore'] },
  conditions: [],
  judge: ({ vessel, stirrer, baffles }) => {
    if (baffles === null) return undefined;
    if (baffles.bore !== vessel.bore) {
      return notMet(
        `${baffles.name} are made for bore ${String(baffles.bore)}; ${vessel.name} has bore ${String(vessel.bore)}.`,
      );
    }
    return wallImpellers.includes(stirrer.impeller)
      ? notMet(`${stirrer.name} sweeps the wall, where the baffles sit.`)
      : met;
  },
  met: 'The baffles fit.',
  source: [commonPractice('no baffles with wall-sweeping impellers')],
});
