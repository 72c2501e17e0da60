import { z } from 'zod';
import { type Basis, type Outcome, succeed } from '@flangewise/model';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { basisSchema, weakestBasis } from './basis.js';
import rows from './strength-tables.json' with { type: 'json' };

const strengthTableSchema = z
  .strictObject({
    material: z.string(),
    /** Names of the product that the table is for; the material's own names lead to it where it is `preferred`. */
    names: z.array(z.string()).optional(),
    preferred: z.boolean().optional(),
    quantity: z.enum(['Rp0.2', 'Rp1.0', 'allowable']),
    /** Typical strengths are shown to people and never used for design. */
    kind: z.enum(['minimum', 'typical']),
    code: z.string().optional(),
    level: z.enum(['higher', 'lower']).optional(),
    temperatureUnit: z.enum(['C', 'F']),
    temperatures: z.array(z.number()).min(1),
    stressUnit: z.enum(['MPa', 'ksi']),
    values: z.array(z.number().positive()).min(1),
    /** Temperatures whose value is from memory in a table that is otherwise published. */
    unverifiedAt: z.array(z.number()).optional(),
    source: z.string(),
    basis: basisSchema,
  })
  .refine(({ temperatures, values }) => temperatures.length === values.length);

export interface StrengthPoint {
  readonly temperatureK: number;
  readonly stressPa: number;
  readonly basis: Basis;
}

export interface StrengthTable {
  readonly material: string;
  readonly names: readonly string[];
  readonly preferred: boolean;
  readonly quantity: 'Rp0.2' | 'Rp1.0' | 'allowable';
  readonly kind: 'minimum' | 'typical';
  readonly code: string | undefined;
  readonly level: 'higher' | 'lower' | undefined;
  readonly source: string;
  readonly points: readonly StrengthPoint[];
}

const pascal = { MPa: 1e6, ksi: 6_894_757.293_168 } as const;

const kelvin = (value: number, unit: 'C' | 'F'): number =>
  unit === 'C' ? value + 273.15 : (value + 459.67) / 1.8;

/** The tables of strength over temperature, in SI. */
export const strengthTables: readonly StrengthTable[] = z
  .array(strengthTableSchema)
  .parse(rows)
  .map((row) => ({
    material: row.material,
    names: row.names ?? [],
    preferred: row.preferred ?? false,
    quantity: row.quantity,
    kind: row.kind,
    code: row.code,
    level: row.level,
    source: row.source,
    points: row.temperatures.map((temperature, index) => ({
      temperatureK: kelvin(temperature, row.temperatureUnit),
      stressPa: (row.values[index] ?? 0) * pascal[row.stressUnit],
      basis: row.unverifiedAt?.includes(temperature) === true ? 'from memory, unverified' : row.basis,
    })),
  }));

export interface TabulatedStrength {
  readonly stressPa: number;
  readonly basis: Basis;
  readonly source: string;
  /** The rows used, for the evidence. */
  readonly lower: StrengthPoint;
  readonly upper: StrengthPoint;
}

/** Temperatures are often given rounded to a hundredth of a kelvin: this much past the last row still counts as on it. */
const endToleranceK = 0.05;

/**
 * Strength at a temperature: straight line between rows. Below the first row its value holds, which is on the safe
 * side; above the last row there is no value.
 *
 * @error CALC_OUT_OF_RANGE above the last row
 */
export const strengthAt = (table: StrengthTable, temperatureK: number): Outcome<TabulatedStrength> => {
  const { points, source } = table;
  const upperIndex = points.findIndex((point) => point.temperatureK >= temperatureK - endToleranceK);
  const upper = points[upperIndex];
  if (upper === undefined) {
    const last = points[points.length - 1];
    return outOfRange({
      field: 'temperatureK',
      given: temperatureK,
      unit: 'K',
      allowed: `up to ${shown(last?.temperatureK ?? 0)} K for ${table.material}, where the table ends (${source})`,
    });
  }
  const lower = points[upperIndex - 1] ?? upper;
  const span = upper.temperatureK - lower.temperatureK;
  const share = span > 0 ? Math.min(1, Math.max(0, (temperatureK - lower.temperatureK) / span)) : 1;
  const onRow = share === 1 || temperatureK >= upper.temperatureK - endToleranceK;
  return succeed({
    stressPa: lower.stressPa + (upper.stressPa - lower.stressPa) * share,
    basis: onRow ? upper.basis : weakestBasis([lower.basis, upper.basis]),
    source,
    lower,
    upper,
  });
};
