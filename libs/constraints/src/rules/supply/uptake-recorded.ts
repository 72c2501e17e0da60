import { met, notMet } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const uptakeRecorded = judgement({
  id: 'supply.uptake-recorded',
  title: 'Gas uptake is measured and recorded',
  group: 'supply',
  kind: 'hard',
  of: { gasSupply: ['recordsUptake'], control: ['recordsUptake'] },
  conditions: ['uptakeRecorded'],
  judge: ({ gasSupply, control }, { uptakeRecorded: asked }) => {
    if (asked !== true) return undefined;
    if (gasSupply?.recordsUptake !== true)
      return notMet(
        `${gasSupply?.name ?? 'No gas supply'} does not measure the uptake, which is to be recorded.`,
      );
    return control.recordsUptake ? met : notMet(`${control.name} does not record the uptake.`);
  },
  met: 'The uptake is measured and recorded.',
  source: [commonPractice('uptake by pressure drop of a reservoir of known volume, or by mass flow')],
});
