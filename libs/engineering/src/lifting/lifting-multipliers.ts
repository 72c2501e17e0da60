import { z } from 'zod';
import { basisSchema } from '../materials/basis.js';
import table from './frequency-multiplier.json' with { type: 'json' };

const tableSchema = z.strictObject({
  source: z.string(),
  basis: basisSchema,
  note: z.string(),
  frequencyPerMin: z.array(z.number()),
  columns: z
    .array(
      z.strictObject({
        upToHours: z.number(),
        /** Hands below 75 cm. */
        lowLift: z.array(z.number()),
        highLift: z.array(z.number()),
      }),
    )
    .length(3),
});

const { frequencyPerMin: frequencies, columns } = tableSchema.parse(table);

export const handCouplings = ['good', 'fair', 'poor'] as const;
export type HandCoupling = (typeof handCouplings)[number];

/** How a load is lifted. */
export interface LiftingTask {
  /** Hands in front of the ankles [m]. */
  readonly horizontalM: number;
  /** Hands above the floor at the start [m]. */
  readonly verticalM: number;
  /** Height through which the load moves [m]. */
  readonly travelM: number;
  readonly asymmetryDeg: number;
  readonly frequencyPerMin: number;
  readonly durationH: number;
  readonly coupling: HandCoupling;
}

export interface LiftingMultipliers {
  readonly horizontal: number;
  readonly vertical: number;
  readonly distance: number;
  readonly asymmetry: number;
  readonly frequency: number;
  readonly coupling: number;
}

/** The manual sets distances up to 10 in, printed as 25 cm too, to the least distance. */
const leastHorizontalM = 0.254;

const interpolated = (values: readonly number[], frequency: number): number => {
  const upper = frequencies.findIndex((entry) => entry >= frequency);
  if (upper < 0) return 0;
  const [f1, v1] = [frequencies[upper], values[upper]];
  const [f0, v0] = [frequencies[upper - 1], values[upper - 1]];
  if (f1 === undefined || v1 === undefined) return 0;
  if (f0 === undefined || v0 === undefined) return v1;
  // A column that ends is not drawn out towards zero: past its last row nothing may be lifted.
  if (v1 === 0) return 0;
  return v0 + ((v1 - v0) * (frequency - f0)) / (f1 - f0);
};

const frequencyMultiplier = ({ frequencyPerMin, durationH, verticalM }: LiftingTask): number => {
  const column = columns.find(({ upToHours }) => durationH <= upToHours);
  if (column === undefined) return 0;
  return interpolated(verticalM < 0.75 ? column.lowLift : column.highLift, frequencyPerMin);
};

const couplingMultiplier = ({ coupling, verticalM }: LiftingTask): number => {
  if (coupling === 'poor') return 0.9;
  return coupling === 'fair' && verticalM < 0.75 ? 0.95 : 1;
};

/**
 * The six multipliers of the revised lifting equation, each 0 past its limit.
 * @source niosh-94-110 (rev. 2021), metric form; table 5 for the frequency
 */
export const liftingMultipliers = (task: LiftingTask): LiftingMultipliers => {
  const { horizontalM: h, verticalM: v, travelM: d, asymmetryDeg: a } = task;
  return {
    horizontal: h > 0.63 ? 0 : h <= leastHorizontalM ? 1 : 0.25 / h,
    vertical: v > 1.75 ? 0 : 1 - 0.3 * Math.abs(v - 0.75),
    distance: d > 1.75 ? 0 : d <= 0.25 ? 1 : 0.82 + 0.045 / d,
    asymmetry: a > 135 ? 0 : 1 - 0.0032 * a,
    frequency: frequencyMultiplier(task),
    coupling: couplingMultiplier(task),
  };
};

export const productOf = (multipliers: LiftingMultipliers): number =>
  multipliers.horizontal *
  multipliers.vertical *
  multipliers.distance *
  multipliers.asymmetry *
  multipliers.frequency *
  multipliers.coupling;
