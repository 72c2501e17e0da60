import { known, missing } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice } from '../../source.js';

export const hotFill = comparison({
  id: 'volume.hot-fill',
  title: 'Hot batch leaves room in the vessel',
  group: 'volume',
  kind: 'hard',
  unit: 'm3',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: { vessel: ['innerVolumeL'] },
  conditions: ['batchVolumeM3', 'hotVolumeM3', 'fillLimit'],
  demand: (_, { batchVolumeM3, hotVolumeM3 }) => {
    if (batchVolumeM3 === undefined) return missing('sets.batchVolume');
    return known(hotVolumeM3 ?? batchVolumeM3);
  },
  limit: ({ vessel }, { fillLimit }) => known((vessel.innerVolumeL / 1000) * fillLimit),
  say: ({ demand, limit, parts }, { hotVolumeM3, fillLimit }) =>
    `${hotVolumeM3 === undefined ? 'The batch (its expansion is not known)' : 'At the highest temperature the batch'} takes ${demand}; ${parts.vessel.name} may hold ${limit} (${String(Math.round(fillLimit * 100))} % of its volume).`,
  source: [commonPractice('at most 85 % full when hot, 60 % for foaming media, never liquid-full')],
});
