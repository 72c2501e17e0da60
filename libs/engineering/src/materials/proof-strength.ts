import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { basisSchema } from './basis.js';
import { materialGrade } from './material-grade.js';
import { strengthAt, strengthTables, type TabulatedStrength } from './strength-table.js';

export type Proof = 'Rp0.2' | 'Rp1.0';

export interface ProofStrengthQuery {
  readonly material: string;
  readonly proof: Proof;
  readonly temperatureK: number;
}

const minimumTables = new Map(
  strengthTables
    .filter(({ kind, quantity: what }) => kind === 'minimum' && what !== 'allowable')
    .map((table) => [`${table.material} ${table.quantity}`, table] as const),
);

const typicalKeys = new Set(
  strengthTables.filter(({ kind }) => kind === 'typical').map(({ material }) => material),
);

/**
 * Minimum proof strength from the tables; a typical value is never returned.
 * @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE above the last row of the table
 */
export const minimumProofStrength = ({
  material,
  proof,
  temperatureK,
}: ProofStrengthQuery): Outcome<TabulatedStrength> => {
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  const { key, designNote } = grade.value;
  const table = minimumTables.get(`${key} ${proof}`);
  if (table !== undefined) return strengthAt(table, temperatureK);
  const typical = typicalKeys.has(key)
    ? ' Only typical values are published, and those are not for design.'
    : '';
  return fail({
    code: 'CALC_MISSING_PROPERTY',
    message:
      `material: no minimum ${proof} over temperature is on file for ${key}.${typical} ${designNote ?? ''}`.trim(),
    field: 'material',
    given: material,
  });
};

/**
 * Minimum proof strength R_p0.2 or R_p1.0 of a material at a temperature.
 *
 *   R(T) = R_i + (R_i+1 − R_i)(T − T_i)/(T_i+1 − T_i)
 *
 * @param material     number or common name
 * @param proof        Rp0.2 or Rp1.0
 * @param temperatureK T [K]
 * @returns strengthPa R(T) [Pa] and what it rests on
 * @range to the last row of each table; below the first row its value holds
 * @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source en-10028-7, en-10028-2 (rows with their own source in strength-tables.json)
 */
export const proofStrength = calculation({
  id: 'materials.proofStrength',
  title: 'Minimum proof strength at temperature',
  inputs: z.strictObject({
    material: z.string().min(1).meta({ description: 'Material number or common name' }),
    proof: z.enum(['Rp0.2', 'Rp1.0']).meta({ description: 'Proof strength at 0.2 % or 1 % strain' }),
    temperatureK: quantity(
      { unit: 'K', symbol: 'T', description: 'Metal temperature' },
      z.number().min(4).max(1500),
    ),
  }),
  outputs: z.strictObject({
    strengthPa: quantity({ unit: 'Pa', symbol: 'R_p', description: 'Minimum proof strength' }),
    basis: basisSchema.meta({ description: 'What the rows used are worth' }),
  }),
  formula: String.raw`R(T) = R_i + (R_{i+1} - R_i)\,\frac{T - T_i}{T_{i+1} - T_i}`,
  range: 'up to the last row of the table of each material; below its first row the first value holds',
  source: [
    published('en-10028-7 proof strength at elevated temperature'),
    published('en-10028-2 proof strength at elevated temperature'),
    fromMemory('en-10028-7 Rp1.0 of 1.4404, 1.4435 and 1.4571, and the VdTÜV sheets of nickel alloys'),
  ],
  compute: (inputs, log) => {
    const strength = minimumProofStrength(inputs);
    if (!strength.ok) return strength;
    const { stressPa, basis, source, lower, upper } = strength.value;
    log?.({
      symbol: 'R_p',
      formula: 'R_i + (R_i+1 − R_i)(T − T_i)/(T_i+1 − T_i)',
      substituted: `between ${shown(lower.stressPa)} Pa at ${shown(lower.temperatureK)} K and ${shown(upper.stressPa)} Pa at ${shown(upper.temperatureK)} K`,
      value: stressPa,
      unit: 'Pa',
      note: `${source} (${basis})`,
    });
    return succeed({ strengthPa: stressPa, basis });
  },
});
