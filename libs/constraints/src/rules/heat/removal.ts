import { known, missing, notApplicable, unverified } from '../../figure.js';
import { comparison } from '../../rule.js';
import { commonPractice, fromMemory } from '../../source.js';

/** Unfavourable ends of overall coefficients [W/(m²·K)]: coil in a stirred light liquid on water, oil jacket. */
const coilCoefficient = 400;
const jacketCoefficient = 150;
/** Mean temperature of cooling water in the coil, and of a jacket held colder than the batch. */
const waterK = 293.15;
const coldestJacketBelowBatchK = 60;

/** Cooling power of a circulator at a fluid temperature, the lower neighbour of its table: the safe side. */
const powerAt = (
  table: readonly { readonly temperatureK: number; readonly powerW: number }[],
  temperatureK: number,
): number =>
  [...table]
    .sort((a, b) => a.temperatureK - b.temperatureK)
    .filter((p) => p.temperatureK <= temperatureK)
    .at(-1)?.powerW ?? 0;

export const heatRemoval = comparison({
  id: 'heat.removal',
  title: 'Heat of reaction is removed',
  group: 'heat',
  kind: 'hard',
  unit: 'W',
  utilisation: 'ratio',
  demandOf: {},
  limitOf: {
    coil: ['areaM2'],
    vessel: ['jacket'],
    circulator: ['coolingPowerW', 'minTemperatureK'],
  },
  conditions: ['peakHeatW', 'exothermic', 'temperatureUsualK', 'temperatureMaxK'],
  demand: (_, { peakHeatW, exothermic }) =>
    peakHeatW !== undefined
      ? known(peakHeatW)
      : exothermic === true
        ? missing('process.peakUptake')
        : notApplicable,
  limit: ({ coil, vessel, circulator }, { temperatureUsualK, temperatureMaxK }) => {
    const batchK = temperatureUsualK ?? temperatureMaxK;
    if (batchK === undefined) return missing('process.temperature.highest');
    const byCoil = coil === null ? 0 : coilCoefficient * coil.areaM2 * Math.max(0, batchK - waterK);
    const jacketK =
      circulator === null ? batchK : Math.max(circulator.minTemperatureK, batchK - coldestJacketBelowBatchK);
    const byJacket =
      vessel.jacket === null || circulator === null
        ? 0
        : Math.min(
            jacketCoefficient * vessel.jacket.areaM2 * (batchK - jacketK),
            powerAt(circulator.coolingPowerW, jacketK),
          );
    return byCoil + byJacket === 0
      ? notApplicable
      : unverified(
          byCoil + byJacket,
          'The lower end of usual overall coefficients was taken; a measured value should replace it.',
        );
  },
  say: ({ demand, limit }) => `At its peak the reaction gives ${demand}; coil and jacket take away ${limit}.`,
  source: [
    fromMemory('overall coefficients: coil 400, oil jacket 150 W/(m²·K), lower ends'),
    commonPractice('unfavourable end of U decides'),
  ],
});
