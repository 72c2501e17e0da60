import type { Judgement } from '../../figure.js';
import { mainLiquid, propertiesAt } from '../../liquid.js';
import { judgement } from '../../rule.js';
import { commonPractice, fromMemory, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { filmRemovalByCoil, filmRemovalByJacket, type Removal } from '../heat/film-removal.js';

const shownRemoval = ({ what, lower, upper, areaM2, removedW }: Removal): string =>
  `${what} U = ${lower.toFixed(0)} to ${upper.toFixed(0)} W/(m²·K) on ${shownQuantity(areaM2, 'm2', 'down')}, ${shownQuantity(removedW, 'W', 'down')}`;

export const removalByFilms = judgement({
  id: 'heat.removal-by-films',
  title: 'Heat removal by film coefficients',
  group: 'heat',
  kind: 'advice',
  unit: 'W',
  of: {
    vessel: ['geometry', 'jacket', 'construction', 'material', 'innerVolumeL', 'liningThicknessM'],
    stirrer: ['impeller', 'diameterM'],
    coil: ['areaM2', 'tubeDiameterM', 'coilDiameterM', 'material'],
    circulator: ['coolingPowerW', 'minTemperatureK', 'flowM3PerS'],
    fluid: ['fluid'],
  },
  conditions: [
    'media',
    'viscosityMaxPaS',
    'speedMaxPerS',
    'temperatureUsualK',
    'temperatureMaxK',
    'batchVolumeM3',
    'peakHeatW',
  ],
  judge: (parts, conditions, proof): Judgement | undefined => {
    const { media, viscosityMaxPaS, speedMaxPerS, batchVolumeM3, peakHeatW } = conditions;
    const temperatureK = conditions.temperatureUsualK ?? conditions.temperatureMaxK;
    const liquid = mainLiquid(media);
    if (temperatureK === undefined || liquid === undefined) return undefined;
    if (viscosityMaxPaS === undefined || speedMaxPerS === undefined || batchVolumeM3 === undefined)
      return undefined;
    const properties = propertiesAt(liquid, temperatureK, proof);
    const { densityKgPerM3, heatCapacityJPerKgK, conductivityWPerMK } = properties ?? {};
    if (densityKgPerM3 === undefined || heatCapacityJPerKgK === undefined || conductivityWPerMK === undefined)
      return undefined;
    const batch = {
      temperatureK,
      densityKgPerM3,
      heatCapacityJPerKgK,
      conductivityWPerMK,
      viscosityPaS: viscosityMaxPaS,
      speedPerS: speedMaxPerS,
      volumeM3: batchVolumeM3,
    };
    const removals = [
      filmRemovalByCoil(parts, batch, proof),
      filmRemovalByJacket(parts, batch, proof),
    ].filter((r) => r !== undefined);
    if (removals.length === 0) return undefined;
    const removedW = removals.reduce((sum, r) => sum + r.removedW, 0);
    const text = `By films with ${parts.stirrer.name} at ${shownQuantity(temperatureK, 'K')}: ${removals.map(shownRemoval).join('; ')}, at the lower end. A measured coefficient replaces it.`;
    return {
      status: peakHeatW !== undefined && peakHeatW > removedW ? 'met with caution' : 'met',
      text,
      limit: removedW,
      ...(peakHeatW === undefined ? {} : { demand: peakHeatW, utilisation: peakHeatW / removedW }),
    };
  },
  met: 'No coil and no jacket.',
  source: [
    published('coulson-richardson-1 eq. 9.202 to 9.204'),
    published('lehrer-1970, stein-schmidt-1993'),
    fromMemory('films at the wall of a stirred vessel'),
    commonPractice('fouling 2e-4 m²·K/W, jacket nozzle 15 mm, half of the free flow of the pump'),
  ],
});
