import { known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const headroom = comparison({
  id: 'lifting.headroom',
  title: 'System opens below the ceiling',
  group: 'lifting',
  kind: 'hard',
  unit: 'm',
  utilisation: 'ratio',
  demandOf: { frame: ['topHeightM'], lift: ['moves', 'strokeM'] },
  limitOf: {},
  conditions: ['ceilingHeightM'],
  demand: ({ frame, lift }) => known(frame.topHeightM + (lift?.moves === 'cover' ? lift.strokeM : 0)),
  limit: (_, { ceilingHeightM }) =>
    ceilingHeightM === undefined ? missing('site.ceilingHeight') : known(ceilingHeightM),
  say: ({ demand, limit, parts }) =>
    `${parts.frame.name}${parts.lift?.moves === 'cover' ? ` with the stroke of ${parts.lift.name}` : parts.lift?.moves === 'vessel' ? `, the vessel lowered by ${parts.lift.name},` : ''} needs ${demand}; the ceiling is at ${limit}.`,
  source: [commonPractice('headroom of the open system')],
});
