import { caution, met } from '../../figure.js';
import { judgement } from '../../rule.js';
import { published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';

export const hotSurface = judgement({
  id: 'hazardous-area.hot-surface',
  title: 'Outer surfaces stay below the ignition temperature',
  group: 'hazardous area',
  kind: 'caution',
  unit: 'K',
  of: { vessel: ['construction'], heater: ['maxWallTemperatureK'] },
  conditions: ['zone', 'marking', 'temperatureMaxK'],
  judge: ({ vessel, heater }, { zone, marking, temperatureMaxK }) => {
    if (zone === undefined || zone === 'none' || marking === undefined) return undefined;
    const hottest = heater?.maxWallTemperatureK ?? temperatureMaxK;
    if (hottest === undefined) return undefined;
    return hottest <= marking.surfaceLimitK
      ? { ...met, demand: hottest, limit: marking.surfaceLimitK }
      : caution(
          `${heater?.name ?? vessel.name} can reach ${shownQuantity(hottest, 'K', 'up')}; surfaces in zone ${zone} stay below ${shownQuantity(marking.surfaceLimitK, 'K', 'down')} (${marking.from}). Set the limiter below it, or insulate and monitor the surface.`,
        );
  },
  met: 'The hottest surface stays below the limit for the zone.',
  source: [published('iec-60079-14')],
});
