import {
  type Assessment,
  type Item,
  parseSlotPath,
  type SlotName,
  slotPath,
  type System,
} from '@flangewise/model';
import { formatNumber, formatQuantity, thinSpace } from '@flangewise/quantities';
import type { Row } from './issue.js';

interface Sources {
  readonly system: System;
  readonly items: ReadonlyMap<string, Item>;
}

const chosen = <S extends SlotName>(
  { system, items }: Sources,
  slot: S,
  set = 0,
): Extract<Item, { slot: S }> | undefined => {
  const place =
    parseSlotPath(slotPath(slot, set))?.set === undefined ? system.frame : system.sets[set]?.choices;
  const id = (place as Readonly<Record<string, string | null | undefined>> | undefined)?.[slot];
  const item = typeof id === 'string' ? items.get(id) : undefined;
  return item?.slot === slot ? (item as Extract<Item, { slot: S }>) : undefined;
};

/** How the tables of the directive name a category, in words. */
const categoryText = (category: string): string =>
  /^art\.? ?4\(3\)$/i.test(category) ? 'article 4(3), none' : category;

/** Ratings of one vessel as the catalogue and the law tables give them. */
export const setRatingRows = (sources: Sources & { readonly assessment: Assessment }, set: number): Row[] => {
  const { assessment } = sources;
  const vessel = chosen(sources, 'vessel', set);
  const conformity = assessment.conformity.find((entry) => entry.set === set);
  if (vessel === undefined) return [];
  const { rating, innerVolumeL, jacket } = vessel;
  return [
    ...(rating === undefined
      ? []
      : [
          {
            label: 'PS of the vessel',
            value: formatQuantity(rating.maxPressurePaGauge, 'pressure', { rounding: 'down' }),
          },
          {
            label: 'TS of the vessel',
            value: `${formatQuantity(rating.minTemperatureK, 'temperature', { rounding: 'up' }).replace(/\u2009.*$/, '')} to ${formatQuantity(rating.maxTemperatureK, 'temperature', { rounding: 'down' })}`,
          },
          { label: 'Vessel stands full vacuum', value: rating.vacuum ? 'yes' : 'no' },
        ]),
    {
      label: 'Volume, all spaces',
      value:
        innerVolumeL < 0.1
          ? `${formatNumber(innerVolumeL * 1000)}${thinSpace}mL`
          : `${formatNumber(innerVolumeL)}${thinSpace}L`,
    },
    ...(jacket === null
      ? []
      : [
          {
            label: 'PS of the jacket',
            value: formatQuantity(jacket.maxPressurePaGauge, 'pressure', { rounding: 'down' }),
          },
        ]),
    ...(conformity?.testPressurePaGauge === undefined
      ? []
      : [
          {
            label: 'Test pressure',
            value: formatQuantity(conformity.testPressurePaGauge, 'pressure', { rounding: 'up' }),
          },
        ]),
    ...(conformity === undefined ? [] : [{ label: 'Category', value: categoryText(conformity.category) }]),
  ];
};

const massOf = ({ system, items }: Sources): number => {
  const massOfAll = (choices: Readonly<Record<string, string | null | undefined>>): number =>
    Object.values(choices).reduce(
      (sum, id) => sum + (typeof id === 'string' ? (items.get(id)?.massKg ?? 0) : 0),
      0,
    );
  return system.sets.reduce((sum, set) => sum + set.count * massOfAll(set.choices), massOfAll(system.frame));
};

export const massRow = (sources: Sources): Row => ({
  label: 'Mass of all parts, empty',
  value: formatQuantity(massOf(sources), 'mass', { rounding: 'up' }),
});

const electricalOf = ({ system, items }: Sources): number => {
  const load = (choices: Readonly<Record<string, string | null | undefined>>): number =>
    Object.values(choices).reduce(
      (sum, id) => sum + (typeof id === 'string' ? (items.get(id)?.electrical?.powerW ?? 0) : 0),
      0,
    );
  return system.sets.reduce((sum, set) => sum + set.count * load(set.choices), load(system.frame));
};

/** What the site has to give: sums of what the parts draw, and what the inquiry says. */
export const utilityRows = (sources: Sources): Row[] => {
  const { system } = sources;
  const load = electricalOf(sources);
  const frame = chosen(sources, 'frame');
  const lift = chosen(sources, 'lift');
  const supply = chosen(sources, 'gasSupply');
  const coil = system.sets.some((_, set) => chosen(sources, 'coil', set) !== undefined);
  return [
    ...(load > 0
      ? [
          {
            label: 'Electrical',
            value: `${formatQuantity(load, 'power', { rounding: 'up' })}${system.inquiry.site.electricalSupply === undefined ? '' : `, ${system.inquiry.site.electricalSupply}`}`,
          },
        ]
      : []),
    ...(coil ? [{ label: 'Cooling water', value: 'for the coil' }] : []),
    ...(supply === undefined
      ? []
      : [
          {
            label: 'Gas, at most',
            value: formatQuantity(supply.maxOutletPressurePaGauge, 'pressure', { rounding: 'down' }),
          },
        ]),
    ...(frame === undefined
      ? []
      : [
          {
            label: 'Height',
            value: formatQuantity(frame.topHeightM, 'length', { unit: 'm', rounding: 'up' }),
          },
        ]),
    ...(frame === undefined || lift?.moves !== 'cover'
      ? []
      : [
          {
            label: 'Height, lift up',
            value: formatQuantity(frame.topHeightM + lift.strokeM, 'length', { unit: 'm', rounding: 'up' }),
          },
        ]),
  ];
};
