import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import fluidsFile from './heat-transfer-fluids.json' with { type: 'json' };

const pointSchema = z.strictObject({
  temperatureK: z.number().positive(),
  densityKgPerM3: z.number().positive(),
  heatCapacityJPerKgK: z.number().positive(),
  conductivityWPerMK: z.number().positive(),
  viscosityPaS: z.number().positive(),
});

type Point = z.output<typeof pointSchema>;

const rowSchema = z.strictObject({
  name: z.string(),
  aliases: z.array(z.string()),
  points: z.array(pointSchema).min(2),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
});

/** Heat transfer fluids by kind, with properties at rising temperatures. */
export const heatTransferFluids: readonly z.output<typeof rowSchema>[] = z
  .strictObject({ about: z.string(), rows: z.array(rowSchema) })
  .parse(fluidsFile).rows;

const byKey = new Map(
  heatTransferFluids.flatMap((row) =>
    [row.name, ...row.aliases].map((key) => [key.toLowerCase(), row] as const),
  ),
);

/** Linear between points; the viscosity in its logarithm over 1/T. */
const between = (left: Point, right: Point, temperatureK: number): Point => {
  const share = (temperatureK - left.temperatureK) / (right.temperatureK - left.temperatureK);
  const linear = (from: number, to: number): number => from + share * (to - from);
  const inverse =
    (1 / temperatureK - 1 / left.temperatureK) / (1 / right.temperatureK - 1 / left.temperatureK);
  return {
    temperatureK,
    densityKgPerM3: linear(left.densityKgPerM3, right.densityKgPerM3),
    heatCapacityJPerKgK: linear(left.heatCapacityJPerKgK, right.heatCapacityJPerKgK),
    conductivityWPerMK: linear(left.conductivityWPerMK, right.conductivityWPerMK),
    viscosityPaS: left.viscosityPaS * (right.viscosityPaS / left.viscosityPaS) ** inverse,
  };
};

const pointAt = (points: readonly Point[], temperatureK: number, name: string): Outcome<Point> => {
  for (const [index, right] of points.entries()) {
    const left = points[index - 1];
    if (left && temperatureK >= left.temperatureK && temperatureK <= right.temperatureK) {
      return succeed(between(left, right, temperatureK));
    }
  }
  return outOfRange({
    field: 'temperatureK',
    given: temperatureK,
    unit: 'K',
    allowed: `${shown(points[0]?.temperatureK ?? 0)} to ${shown(points.at(-1)?.temperatureK ?? 0)} K (${name})`,
  });
};

/**
 * Properties of a heat transfer fluid by its kind, typical values.
 *
 * @param fluid        kind of fluid, for instance `modified terphenyl`, `silicone oil, low temperature`, `water`
 * @param temperatureK T [K]
 * @returns densityKgPerM3 [kg/m³], heatCapacityJPerKgK [J/(kg·K)], conductivityWPerMK [W/(m·K)], viscosityPaS [Pa·s]
 * @range the tabulated temperatures; they are no limit of use: flash point, boiling and decomposition are on the data sheet
 * @error CALC_UNKNOWN_SUBSTANCE, CALC_OUT_OF_RANGE
 * @source coolprop-8 incompressible fluids
 */
export const heatTransferFluid = calculation({
  id: 'heat.heatTransferFluid',
  title: 'Properties of a heat transfer fluid',
  inputs: z.strictObject({
    fluid: z.string().min(1).meta({ description: 'Kind of heat transfer fluid' }),
    temperatureK: quantity({ unit: 'K', symbol: 'T', description: 'Temperature' }, z.number().positive()),
  }),
  outputs: z.strictObject({
    densityKgPerM3: quantity({ unit: 'kg/m3', symbol: 'ρ', description: 'Density' }),
    heatCapacityJPerKgK: quantity({ unit: 'J/(kg.K)', symbol: 'c', description: 'Heat capacity' }),
    conductivityWPerMK: quantity({ unit: 'W/(m.K)', symbol: 'k', description: 'Thermal conductivity' }),
    viscosityPaS: quantity({ unit: 'Pa.s', symbol: 'μ', description: 'Dynamic viscosity' }),
  }),
  formula: String.raw`\rho, c, k\ \text{linear},\ \ln\mu\ \text{linear in}\ 1/T\ \text{between points}`,
  range: 'the tabulated temperatures; they are no limit of use',
  source: [
    published('coolprop-8 incompressible fluids'),
    commonPractice('typical values of the kind of fluid'),
  ],
  compute: ({ fluid, temperatureK }, log) => {
    const row = byKey.get(fluid.trim().toLowerCase());
    if (row === undefined) {
      return fail({
        code: 'CALC_UNKNOWN_SUBSTANCE',
        message: `fluid: "${fluid}" given; one of: ${heatTransferFluids.map(({ name }) => name).join('; ')}`,
        field: 'fluid',
        given: fluid,
        allowed: 'a tabulated kind of heat transfer fluid',
      });
    }
    const point = pointAt(row.points, temperatureK, row.name);
    if (!point.ok) return point;
    const { densityKgPerM3, heatCapacityJPerKgK, conductivityWPerMK, viscosityPaS } = point.value;
    const properties = { densityKgPerM3, heatCapacityJPerKgK, conductivityWPerMK, viscosityPaS };
    log?.({
      symbol: 'ρ, c, k, μ',
      formula: 'between the tabulated points',
      substituted: `T = ${shown(temperatureK)} K: ${Object.values(properties).map(shown).join(', ')}`,
      value: properties.densityKgPerM3,
      unit: 'kg/m3',
      note: `${row.name}, ${row.source}; the data sheet of the fluid in use replaces it`,
    });
    return succeed(properties);
  },
});
