import { known, missing, unverified } from '../../figure.js';
import { fillTemperatureK, hotVolumeOf, mainLiquid } from '../../liquid.js';
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
  conditions: [
    'batchVolumeM3',
    'hotVolumeM3',
    'hotVolumeEstimated',
    'fillLimit',
    'media',
    'temperatureMinK',
    'temperatureMaxK',
  ],
  demand: (_, conditions, proof) => {
    const { batchVolumeM3, hotVolumeM3, hotVolumeEstimated, media, temperatureMaxK } = conditions;
    if (batchVolumeM3 === undefined) return missing('sets.batchVolume');
    if (hotVolumeM3 === undefined) {
      return unverified(batchVolumeM3, 'The cold batch was taken: its expansion is not on file.');
    }
    const liquid = mainLiquid(media);
    if (proof !== undefined && liquid !== undefined && temperatureMaxK !== undefined) {
      const fillK = fillTemperatureK(conditions.temperatureMinK);
      hotVolumeOf(liquid, { volumeM3: batchVolumeM3, fillK, hotK: temperatureMaxK }, proof);
    }
    return hotVolumeEstimated === true
      ? unverified(hotVolumeM3, 'Its expansion is an estimate.')
      : known(hotVolumeM3);
  },
  limit: ({ vessel }, { fillLimit }) => known((vessel.innerVolumeL / 1000) * fillLimit),
  say: ({ demand, limit, parts }, { hotVolumeM3, fillLimit }) =>
    `${hotVolumeM3 === undefined ? 'The batch (its expansion is not known)' : 'At the highest temperature the batch'} takes ${demand}; ${parts.vessel.name} may hold ${limit} (${String(Math.round(fillLimit * 100))} % of its volume).`,
  source: [commonPractice('at most 85 % full when hot, 60 % for foaming media, never liquid-full')],
});
