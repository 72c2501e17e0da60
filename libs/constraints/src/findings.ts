import { formatQuantity, absoluteToGauge } from '@flangewise/quantities';
import type { System } from '@flangewise/model';
import type { Conditions } from './conditions.js';
import { fillTemperatureK, mainLiquid, vapourPressureAt } from './liquid.js';
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
  const bound =
    liquid.massFraction !== undefined && liquid.massFraction < 1
      ? ' (water taken as the upper bound for the solution)'
      : '';
  return `${liquid.name} has a vapour pressure of its own of about ${formatQuantity(absoluteToGauge(vapour), 'pressure', { reference: 'absolute', rounding: 'up' })} at ${shown(c.temperatureMaxK, 'K')}${bound}.`;
};

const marking = (c: Conditions): string | undefined =>
  c.zone === undefined || c.zone === 'none' || c.marking === undefined
    ? undefined
    : `Zone ${c.zone} with these substances asks for category ${c.marking.category}, gas group ${c.marking.gasGroup}, temperature class ${c.marking.temperatureClass} (${c.marking.from} decides the class), for air at 1 bar; every surface stays below ${shownQuantity(c.marking.surfaceLimitK, 'K', 'down')}.`;

const reliefOf = (c: Conditions): string | undefined =>
  (c.exothermic === true || c.selfReactive === true) && c.calorimetry !== true
    ? 'The reaction gives heat: relief is not decidable without calorimetric data; areas for gas, fire and expansion are partial answers.'
    : undefined;

/** What follows from the inquiry alone, before any part is chosen. */
export const findingsOf = (system: System, conditions: readonly Conditions[]): readonly string[] => {
  const all = conditions.flatMap((c) =>
    [hotBatch(c), ownVapour(c), marking(c), reliefOf(c)].filter((f) => f !== undefined),
  );
  const several =
    system.inquiry.sets.length > 1
      ? [
          system.inquiry.arrangement === 'parallel'
            ? 'The sets work at once: loads, gas and utilities add up.'
            : 'The sets are mounted one at a time: each has its own disc, gauge and gas limit, so that no shared source can exceed PS of the mounted one.',
        ]
      : [];
  return [...new Set([...all, ...several])];
};
