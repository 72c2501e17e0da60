import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { fromMemory, published } from '../source-reference.js';
import { basisSchema } from './basis.js';
import { designStressAt } from './design-stress-at.js';
import { materialGrade, normalisedName } from './material-grade.js';
import { strengthAt, type StrengthTable, strengthTables } from './strength-table.js';

const allowableTables = strengthTables.filter(({ quantity: what }) => what === 'allowable');

export const allowableStressCodes = [
  'EN 13445-3',
  'ASME VIII-1',
  'ASME Code Case 2226-1',
  'AD 2000',
] as const;

interface Query {
  readonly code: (typeof allowableStressCodes)[number];
  readonly material: string;
  readonly stressLevel: 'higher' | 'lower';
}

/** A product's own name finds its table; a material's name finds the preferred table of that material. */
const findTable = ({ code, material, stressLevel }: Query): Outcome<StrengthTable> => {
  const ofCode = allowableTables.filter(
    (table) => table.code === code && (table.level === undefined || table.level === stressLevel),
  );
  const wanted = normalisedName(material);
  const byProduct = ofCode.find(({ names }) => names.some((name) => normalisedName(name) === wanted));
  if (byProduct !== undefined) return succeed(byProduct);
  const grade = materialGrade(material);
  if (!grade.ok) return grade;
  const ofMaterial = ofCode.filter((table) => table.material === grade.value.key);
  const preferred = ofMaterial.find((table) => table.preferred || table.level === stressLevel);
  if (preferred !== undefined) return succeed(preferred);
  const products = ofMaterial.flatMap(({ names }) => names);
  return fail({
    code: 'CALC_MISSING_PROPERTY',
    message:
      products.length > 0
        ? `material: ${material} has several tables in ${code}; name the product: ${products.join(', ')}`
        : `material: no allowable stress of ${code} is on file for ${grade.value.key}. ${grade.value.designNote ?? ''}`.trim(),
    field: 'material',
    given: material,
    ...(products.length > 0 ? { allowed: products.join(', ') } : {}),
  });
};

/**
 * Allowable stress of a material by a code.
 *
 * @param code         EN 13445-3 (nominal design stress), ASME VIII-1, ASME Code Case 2226-1, AD 2000
 * @param material     product as in the code's table (`SA-240 316L (dual certified)`), or number or common name
 * @param stressLevel  of two columns the higher (larger strain) or the lower, the default
 * @param temperatureK metal temperature [K]
 * @returns stressPa [Pa] and what it rests on
 * @range to the last row of each table; below the first row its value holds
 * @error CALC_UNKNOWN_MATERIAL, CALC_MISSING_PROPERTY, CALC_OUT_OF_RANGE
 * @source asme-ii-d table 1A, 1B; asme-cc-2226-1 table 2; en-13445-3:2021 §6 (rows in strength-tables.json)
 */
export const allowableStress = calculation({
  id: 'materials.allowableStress',
  title: 'Allowable stress at temperature',
  inputs: z.strictObject({
    code: z.enum(allowableStressCodes).meta({ description: 'Design code' }),
    material: z.string().min(1).meta({ description: 'Product, material number or common name' }),
    stressLevel: z
      .enum(['higher', 'lower'])
      .optional()
      .meta({ description: 'Of two columns of a table; lower where nothing is given' }),
    temperatureK: quantity(
      { unit: 'K', symbol: 'T', description: 'Metal temperature' },
      z.number().min(4).max(1500),
    ),
  }),
  outputs: z.strictObject({
    stressPa: quantity({ unit: 'Pa', symbol: 'S', description: 'Allowable stress' }),
    basis: basisSchema.meta({ description: 'What the rows used are worth' }),
  }),
  formula: String.raw`S(T) = S_i + (S_{i+1} - S_i)\,\frac{T - T_i}{T_{i+1} - T_i}`,
  range: 'up to the last row of each table; below its first row the first value holds',
  source: [
    published('asme-ii-d table 1A and 1B'),
    published('asme-cc-2226-1 table 2'),
    published('en-13445-3:2021 §6'),
    fromMemory('room-temperature allowable stress of N10276, N06600 and N06625'),
  ],
  compute: ({ code, material, stressLevel = 'lower', temperatureK }, log) => {
    if (code === 'EN 13445-3') {
      const stress = designStressAt(material, temperatureK);
      if (!stress.ok) return stress;
      const { stressPa, basis, source } = stress.value;
      log?.({
        symbol: 'f',
        formula: stress.value.rule,
        substituted: source,
        value: stressPa,
        unit: 'Pa',
        note: basis,
      });
      return succeed({ stressPa, basis });
    }
    const table = findTable({ code, material, stressLevel });
    if (!table.ok) return table;
    const strength = strengthAt(table.value, temperatureK);
    if (!strength.ok) return strength;
    const { stressPa, basis, source, lower, upper } = strength.value;
    log?.({
      symbol: 'S',
      formula: 'S_i + (S_i+1 − S_i)(T − T_i)/(T_i+1 − T_i)',
      substituted: `between ${shown(lower.stressPa)} Pa at ${shown(lower.temperatureK)} K and ${shown(upper.stressPa)} Pa at ${shown(upper.temperatureK)} K`,
      value: stressPa,
      unit: 'Pa',
      note: `${source} (${basis})`,
    });
    return succeed({ stressPa, basis });
  },
});
