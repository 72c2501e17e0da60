import { z } from 'zod';

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
  /** Parts kept for special vessels end here; beyond it they are specials themselves. */
  specialEnds: z.strictObject({ maxPressureBarGauge: z.number().positive(), source: z.string() }),
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
