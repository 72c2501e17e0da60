import { type Item, itemSchema, type SlotName } from '@flangewise/model';
import { z } from 'zod';
import { rounded } from '../rounded.js';
import type { Kind } from './kind.js';
import { type PartMaterial, partMaterial } from './part-materials.js';
import { listPrice } from './list-price.js';
import { kelvin, pascal } from './words.js';

const row = z.record(z.string(), z.unknown());

const seriesFile = z.strictObject({
  about: z.string().optional(),
  series: z
    .array(
      z.strictObject({
        firstNumber: z.string().regex(/^[A-Z]{2}-\d{5}$/),
        all: row,
        sizes: z.array(row).min(1),
        variants: z.array(row).min(1).default([{}]),
        materials: z.array(z.string()).min(1).optional(),
      }),
    )
    .min(1),
});

type Series = z.output<typeof seriesFile>['series'][number];

/** An item with its list price in euro. */
export interface PricedItem {
  readonly item: Item;
  readonly priceEur: number;
}

/** The number so many places after the first one of a series. */
export const numberAfter = (first: string, places: number): string =>
  `${first.slice(0, 3)}${String(Number(first.slice(3)) + places)}`;

/** The narrower of what the row rates and where its material is used. */
const ratingOf = (
  rated: { readonly bar?: number | undefined; readonly minC: number; readonly maxC: number },
  bar: number,
  material: PartMaterial | undefined,
) => ({
  maxPressurePaGauge: pascal(bar),
  minTemperatureK: kelvin(Math.max(rated.minC, material?.minC ?? rated.minC)),
  maxTemperatureK: kelvin(Math.min(rated.maxC, material?.maxC ?? rated.maxC)),
});

const itemOf = (
  { slot, complete }: Kind,
  given: { readonly id: string; readonly row: unknown; readonly material: PartMaterial | undefined },
): PricedItem => {
  const { id, material } = given;
  const { row: read, completed } = complete(given.row, material);
  const bar = read.rating?.bar ?? completed.ratedBar;
  const portsM = completed.portsM ?? read.portsM ?? (read.portM === undefined ? [] : [read.portM]);
  const item = itemSchema.parse({
    slot,
    id,
    name: completed.name,
    families: read.families,
    massKg: rounded(completed.massKg * read.massFactor),
    leadTimeDays: read.leadTimeDays + read.furtherDays + (material?.furtherDays ?? 0),
    wetted: read.wetted ?? (material === undefined ? [] : [material.material]),
    ...(read.rating === undefined || bar === undefined
      ? {}
      : { rating: { ...ratingOf(read.rating, bar, material), vacuum: completed.noVacuum !== true } }),
    ...(read.protection === undefined
      ? {}
      : {
          electrical: {
            powerW: completed.loadW ?? read.loadW,
            protection: read.protection,
            placement: read.placement,
          },
        }),
    portsM,
    ...(read.reachM === undefined ? {} : { reachM: read.reachM }),
    ...completed.attributes,
  });
  return { item, priceEur: listPrice(read.priceEur * read.priceFactor * (material?.priceFactor ?? 1)) };
};

const membersOf = (
  kind: Kind,
  { firstNumber, all, sizes, variants, materials }: Series,
): readonly PricedItem[] =>
  sizes
    .flatMap((size) => variants.map((variant) => ({ ...all, ...size, ...variant })))
    .flatMap((one) => (materials ?? [undefined]).map((name) => ({ one, name })))
    .map(({ one, name }, place) => {
      const id = numberAfter(firstNumber, place);
      try {
        return itemOf(kind, { id, row: one, material: name === undefined ? undefined : partMaterial(name) });
      } catch (error) {
        throw new Error(`${id}: ${String(error)}`, { cause: error });
      }
    });

/**
 * The items of the series of one slot: every size in every variant and material, numbered in this order from the
 * first number on. Rows are added at the end, so that a number keeps its meaning.
 */
export const itemsOfSeries = (kind: Kind, file: unknown): readonly PricedItem[] =>
  seriesFile.parse(file).series.flatMap((series) => membersOf(kind, series));

export type SeriesFiles = Readonly<Partial<Record<SlotName, unknown>>>;
