import type { ItemOf } from '@flangewise/model';
import { caution, met } from '../../figure.js';
import { judgement } from '../../rule.js';
import { commonPractice, published } from '../../source.js';
import { shownQuantity } from '../../shown-quantity.js';
import { jacketMediumK } from '../heat/heat-up-time.js';

interface Surface {
  readonly name: string;
  readonly temperatureK: number;
}

/** Jacket of a vessel: as hot as its medium is let run, no hotter than the limiter can be set. */
const jacketSurface = (
  circulator: Pick<ItemOf<'circulator'>, 'name' | 'maxTemperatureK'>,
  limiter: Pick<ItemOf<'limiter'>, 'limitRangeK'> | null,
  endK: number | undefined,
): Surface => ({
  name: `The jacket heated by ${circulator.name}`,
  temperatureK: Math.min(
    endK === undefined ? circulator.maxTemperatureK : jacketMediumK(circulator, endK),
    limiter?.limitRangeK.highest ?? Number.POSITIVE_INFINITY,
  ),
});

export const hotSurface = judgement({
  id: 'hazardous-area.hot-surface',
  title: 'Outer surfaces stay below the ignition temperature',
  group: 'hazardous area',
  kind: 'caution',
  unit: 'K',
  of: {
    vessel: ['jacket'],
    heater: ['maxWallTemperatureK'],
    circulator: ['maxTemperatureK'],
    limiter: ['limitRangeK'],
  },
  conditions: ['zone', 'marking', 'temperatureMaxK'],
  judge: ({ vessel, heater, circulator, limiter }, { zone, marking, temperatureMaxK }) => {
    if (zone === undefined || zone === 'none' || marking === undefined) return undefined;
    const surfaces: readonly Surface[] = [
      ...(heater === null ? [] : [{ name: heater.name, temperatureK: heater.maxWallTemperatureK }]),
      ...(vessel.jacket === null || circulator === null
        ? []
        : [jacketSurface(circulator, limiter, temperatureMaxK)]),
      ...(temperatureMaxK === undefined ? [] : [{ name: vessel.name, temperatureK: temperatureMaxK }]),
    ];
    const [hottest] = [...surfaces].sort((a, b) => b.temperatureK - a.temperatureK);
    if (hottest === undefined) return undefined;
    return hottest.temperatureK <= marking.surfaceLimitK
      ? { ...met, demand: hottest.temperatureK, limit: marking.surfaceLimitK }
      : caution(
          `${hottest.name} can reach ${shownQuantity(hottest.temperatureK, 'K', 'up')}; surfaces in zone ${zone} stay below ${shownQuantity(marking.surfaceLimitK, 'K', 'down')} (${marking.from}). Set the limiter below it, or insulate and monitor the surface.`,
        );
  },
  met: 'The hottest surface stays below the limit for the zone.',
  source: [published('iec-60079-14'), commonPractice('jacket up to 50 K above the batch while it heats')],
});
