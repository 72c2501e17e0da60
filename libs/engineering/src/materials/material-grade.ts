import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { basisSchema } from './basis.js';
import rows from './material-grades.json' with { type: 'json' };

const constant = z.strictObject({ value: z.number().positive(), source: z.string(), basis: basisSchema });

const overTemperature = z
  .strictObject({
    temperaturesC: z.array(z.number()).min(1),
    values: z.array(z.number().positive()).min(1),
    source: z.string(),
    basis: basisSchema,
  })
  .refine(({ temperaturesC, values }) => temperaturesC.length === values.length);

/**
 * One material: its names, the families that corrosion rows may name, and its physical data. `designRoute`
 * says by which rule a design stress may be formed; `none` means that the material carries no rating of its own.
 */
const materialGradeSchema = z.strictObject({
  key: z.string(),
  aliases: z.array(z.string()),
  families: z.array(z.string()).min(1),
  designRoute: z.enum(['austenitic', 'ferritic', 'nickel', 'tabulated', 'none']),
  /** Name of the table of allowable stresses that the route `tabulated` uses. */
  designTable: z.string().optional(),
  designNote: z.string().optional(),
  /** Service temperatures: below `minC` and from `peakC` on (or above `maxC` without a peak) not to be used. */
  service: z
    .strictObject({
      minC: z.number(),
      maxC: z.number().optional(),
      peakC: z.number().optional(),
      source: z.string(),
      basis: basisSchema,
    })
    .optional(),
  /** kg/m³ */
  density: constant.optional(),
  /** W/(m·K) */
  conductivity: constant.optional(),
  /** J/(kg·K) */
  heatCapacity: constant.optional(),
  elasticModulusGPa: overTemperature.optional(),
  /** Mean expansion from 20 °C to the temperature [10⁻⁶/K]. */
  expansionPerMK: overTemperature.optional(),
  /** Minimum tensile strength at 20 °C, where a design rule needs it. */
  tensileStrength20MPa: constant.optional(),
});

export type MaterialGrade = z.output<typeof materialGradeSchema>;

/** Every material that the calculations know. */
export const materialGrades: readonly MaterialGrade[] = z.array(materialGradeSchema).parse(rows);

/** Names are compared without case, spaces and punctuation: `C-276`, `c 276` and `C276` are one name. */
export const normalisedName = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, '');

const gradeByName = new Map(
  materialGrades.flatMap((grade) =>
    [grade.key, ...grade.aliases].map((name) => [normalisedName(name), grade] as const),
  ),
);

/**
 * A material by its number or a common name: `316L`, `1.4404`, `2.4819`, `Ti Gr 2`.
 * @error CALC_UNKNOWN_MATERIAL
 */
export const materialGrade = (name: string): Outcome<MaterialGrade> => {
  const grade = gradeByName.get(normalisedName(name));
  if (grade !== undefined) return succeed(grade);
  const allowed = materialGrades.map(({ key }) => key).join(', ');
  return fail({
    code: 'CALC_UNKNOWN_MATERIAL',
    message: `material: ${name} given; known are ${allowed} and their common names`,
    field: 'material',
    given: name,
    allowed,
  });
};
