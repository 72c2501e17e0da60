import { headroom as headroomCalculation } from '@flangewise/engineering';
import { known, missing, reckon } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const headroom = comparison({
  id: 'lifting.headroom',
  title: 'System opens below the ceiling',
  group: 'lifting',
  kind: 'hard',
  unit: 'm',
  utilisation: 'ratio',
  demandOf: { frame: ['heightM', 'topHeightM'], lift: ['moves', 'strokeM'] },
  limitOf: {},
  conditions: ['ceilingHeightM'],
  demand: ({ frame, lift }, { ceilingHeightM }, proof) => {
    // The lift may run to its end, whatever the internals need.
    const stroke = lift?.moves === 'cover' ? lift.strokeM : 0;
    const height = reckon(
      headroomCalculation,
      {
        moving: lift?.moves === 'cover' ? 'cover rises' : 'vessel lowers',
        floorToRimM: frame.heightM,
        coverStackHeightM: Math.max(0, frame.topHeightM - frame.heightM),
        internalsLengthM: stroke,
        clearanceM: 0,
        ceilingHeightM: ceilingHeightM ?? frame.topHeightM + stroke,
      },
      proof,
    );
    return height.ok ? known(height.value.heightNeededM) : missing(height.error.message);
  },
  limit: (_, { ceilingHeightM }) =>
    ceilingHeightM === undefined ? missing('site.ceilingHeight') : known(ceilingHeightM),
  say: ({ demand, limit, parts }) =>
    `${parts.frame.name}${parts.lift?.moves === 'cover' ? ` with the stroke of ${parts.lift.name}` : parts.lift?.moves === 'vessel' ? `, the vessel lowered by ${parts.lift.name},` : ''} needs ${demand}; the ceiling is at ${limit}.`,
  source: [commonPractice('headroom of the open system')],
});
