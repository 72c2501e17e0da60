import { formatQuantity, absoluteToGauge } from '@flangewise/quantities';
import type { System } from '@flangewise/model';
import type { Conditions } from './conditions.js';
import { fillTemperatureK, mainLiquid, vapourBoundText, vapourPressureAt } from './liquid.js';
import { sentenceCase } from './sentence-case.js';
import { shownQuantity } from './shown-quantity.js';

const shown = (value: number, unit: string): string => shownQuantity(value, unit);

const hotBatch = (c: Conditions): string | undefined => {
  const liquid = mainLiquid(c.media);
  if (
    liquid === undefined ||
    c.batchVolumeM3 === undefined ||
    c.hotVolumeM3 === undefined ||
    c.temperatureMaxK === undefined
  )
    return undefined;
  const from = shown(fillTemperatureK(c.temperatureMinK), 'K');
  const needed = shownQuantity(c.hotVolumeM3 / c.fillLimit, 'm3', 'up');
  return `${shown(c.batchVolumeM3, 'm3')} of ${liquid.name} at ${from} become ${shownQuantity(c.hotVolumeM3, 'm3', 'up')} at ${shown(c.temperatureMaxK, 'K')}: a vessel of at least ${needed} is needed at a hot fill of ${String(Math.round(c.fillLimit * 100))} %.`;
};

const ownVapour = (c: Conditions): string | undefined => {
  const liquid = mainLiquid(c.media);
  if (liquid === undefined || c.temperatureMaxK === undefined) return undefined;
  const vapour = vapourPressureAt(liquid, c.temperatureMaxK);
  if (vapour === undefined) return undefined;
  const bound = vapourBoundText(liquid);
  return `${liquid.name} has a vapour pressure of its own of about ${formatQuantity(absoluteToGauge(vapour), 'pressure', { reference: 'absolute', rounding: 'up' })} at ${shown(c.temperatureMaxK, 'K')}${bound === undefined ? '' : ` (${bound})`}.`;
};

const marking = (c: Conditions): string | undefined =>
  c.zone === undefined || c.zone === 'none' || c.marking === undefined
    ? undefined
    : `Zone ${c.zone} with these substances asks for category ${c.marking.category}, gas group ${c.marking.gasGroup}, temperature class ${c.marking.temperatureClass} (${c.marking.from} decides the class), for air at 1 bar; every surface stays below ${shownQuantity(c.marking.surfaceLimitK, 'K', 'down')}.`;

const reliefOf = (c: Conditions): string | undefined =>
  (c.exothermic === true || c.selfReactive === true) && c.calorimetry !== true
    ? 'The reaction gives heat: relief is not decidable without calorimetric data; areas for gas, fire and expansion are partial answers.'
    : undefined;

const shownPressure = (paGauge: number): string => shownQuantity(paGauge, 'Pa', 'up');

/** Several vessels on one frame: what adds up, and what has to be kept apart. */
const several = (system: System, conditions: readonly Conditions[]): string | undefined => {
  const { sets, arrangement } = system.inquiry;
  const atOnce = conditions[0]?.vesselsAtOnce ?? 1;
  if (atOnce > 1)
    return `${String(atOnce)} vessels work at once: electrical load, gas, cooling water and heat to the room add up to ${String(atOnce)} times those of one; each is classed under the pressure equipment law by itself, and each has its own disc.`;
  if (sets.length < 2 || arrangement === 'parallel') return undefined;
  const highest = conditions.flatMap((c) => c.pressureMaxPaGauge ?? []);
  const lowest = Math.min(...highest);
  const apart =
    highest.length > 1 && Math.max(...highest) > lowest
      ? ` The supply for ${shownPressure(Math.max(...highest))} is kept from the set for ${shownPressure(lowest)} by a limiter in its feed or a connector that cannot be interchanged.`
      : '';
  return `The sets are mounted one at a time: each has its own disc, gauge and gas limit, so that no shared source (gas, pump, heater) can exceed PS or TS of the mounted one.${apart}`;
};

/** What follows from the inquiry alone, before any part is chosen. */
export const findingsOf = (system: System, conditions: readonly Conditions[]): readonly string[] => {
  const all = conditions.flatMap((c) => [hotBatch(c), ownVapour(c), marking(c), reliefOf(c)]);
  return [
    ...new Set(
      [...all, several(system, conditions)].flatMap((f) => (f === undefined ? [] : sentenceCase(f))),
    ),
  ];
};
