import { z } from 'zod';
import data from './data/range.json' with { type: 'json' };

/** A family of the range: what it is for and where it ends. */
const familySchema = z.strictObject({
  name: z.string().min(1),
  title: z.string().min(1),
  description: z.string().min(1),
  smallestVolumeL: z.number().positive().meta({ unit: 'L' }),
  largestVolumeL: z.number().positive().meta({ unit: 'L' }),
  maxPressureBarGauge: z.number().positive().meta({ unit: 'bar', description: 'Highest PS, gauge' }),
  maxTemperatureC: z.number().meta({ unit: 'Cel', description: 'Highest TS' }),
});

export const rangeSchema = z.strictObject({
  maker: z.string().min(1),
  /** Beyond these a vessel is a special. */
  standardEnds: z.strictObject({
    maxPressureBarGauge: z.number().positive(),
    maxTemperatureC: z.number(),
    source: z.string(),
  }),
  /** Stress at which bolts of closures are rated. */
  bolting: z.strictObject({
    class: z.string().meta({ description: 'Property class of ISO 898-1' }),
    stressMPa: z.number().positive().meta({ unit: 'MPa' }),
    source: z.string(),
  }),
  families: z.array(familySchema).min(1),
});

export type Range = z.output<typeof rangeSchema>;
export type Family = Range['families'][number];

export const range: Range = data;

export const families: readonly Family[] = range.families;

/** Ends of the standard range in SI; past them a vessel is a special for engineering review, never a refusal. */
export const standardEnds = {
  maxPressurePaGauge: range.standardEnds.maxPressureBarGauge * 1e5,
  maxTemperatureK: range.standardEnds.maxTemperatureC + 273.15,
} as const;
