import { z } from 'zod';
import { fail, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import coefficientsFile from './typical-coefficients.json' with { type: 'json' };

const walls = ['stainless steel', 'glass-lined steel'] as const;
const media = ['steam', 'brine', 'thermal oil'] as const;
const contents = ['water', 'aqueous solution', 'organic liquid', 'light oil', 'heavy oil'] as const;

const rowSchema = z.strictObject({
  wall: z.enum(walls),
  medium: z.enum(media),
  content: z.enum(contents),
  lowWPerM2K: z.number().positive(),
  highWPerM2K: z.number().positive(),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
  note: z.string().optional(),
});

const rows: readonly z.output<typeof rowSchema>[] = z
  .strictObject({ about: z.string(), rows: z.array(rowSchema) })
  .parse(coefficientsFile).rows;

/**
 * Usual overall coefficients of a jacketed vessel, for a first sizing where the films are not known.
 *
 * @param wall, medium, content by kind
 * @returns lowerCoefficientWPerM2K, upperCoefficientWPerM2K [W/(m²·K)]
 * @range moderate agitation; not for half-filled, unstirred or very small vessels
 * @error CALC_MISSING_PROPERTY where the table has no such row
 * @source perry-7 table 11-7
 */
export const typicalCoefficient = calculation({
  id: 'heat.typicalCoefficient',
  title: 'Usual overall coefficient of a jacketed vessel',
  inputs: z.strictObject({
    wall: z.enum(walls).meta({ description: 'Wall between medium and batch' }),
    medium: z.enum(media).meta({ description: 'Medium in the jacket' }),
    content: z.enum(contents).meta({ description: 'Content of the vessel' }),
  }),
  outputs: z.strictObject({
    lowerCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'U_min', description: 'Lower end' }),
    upperCoefficientWPerM2K: quantity({ unit: 'W/(m2.K)', symbol: 'U_max', description: 'Upper end' }),
  }),
  formula: String.raw`U_\mathrm{min} \ldots U_\mathrm{max}\ \text{as tabulated}`,
  range: 'jacketed vessels with moderate agitation',
  source: [published('perry-7 table 11-7')],
  compute: ({ wall, medium, content }, log) => {
    const row = rows.find((r) => r.wall === wall && r.medium === medium && r.content === content);
    if (row === undefined) {
      return fail({
        code: 'CALC_MISSING_PROPERTY',
        message: `content: ${content} with ${medium} behind ${wall} given; not tabulated. Give film coefficients or a measured value`,
        field: 'content',
        given: content,
      });
    }
    log?.({
      symbol: 'U',
      formula: 'as tabulated',
      substituted: `${String(row.lowWPerM2K)} to ${String(row.highWPerM2K)}`,
      value: row.lowWPerM2K,
      unit: 'W/(m2.K)',
      note: [row.source, row.note].filter((part) => part !== undefined).join('; '),
    });
    return succeed({ lowerCoefficientWPerM2K: row.lowWPerM2K, upperCoefficientWPerM2K: row.highWPerM2K });
  },
});
