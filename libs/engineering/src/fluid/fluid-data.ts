import { z } from 'zod';
import { fail, type CalculationError, type Outcome, succeed } from '@flangewise/model';
import { correlationSchema } from './correlation.js';
import fluidsFile from './fluids.json' with { type: 'json' };

const basis = z.enum(['published', 'common practice', 'from memory, unverified']);

/** One pure fluid. A property without rows is not known here. */
export const fluidSchema = z.strictObject({
  name: z.string(),
  cas: z.string().regex(/^\d{2,7}-\d{2}-\d$/),
  aliases: z.array(z.string()),
  molarMassKgPerMol: z.number().positive(),
  criticalPoint: z
    .strictObject({
      temperatureK: z.number().positive(),
      pressurePaAbs: z.number().positive().optional(),
      source: z.string(),
      basis,
    })
    .optional(),
  normalBoilingPointK: z.number().positive().optional(),
  meltingPointK: z.number().positive().optional(),
  /** [Pa] */
  vapourPressure: z.array(correlationSchema),
  /** [kg/m³]; form dippr105 [mol/m³] */
  liquidDensity: z.array(correlationSchema),
  /** Constant [J/(kg·K)]; other forms [J/(kmol·K)] */
  liquidHeatCapacity: z.array(correlationSchema),
  /** [Pa·s] */
  liquidViscosity: z.array(correlationSchema),
  /** [W/(m·K)] */
  liquidConductivity: z.array(correlationSchema),
  heatOfVaporisation: z
    .strictObject({
      boilingPointK: z.number().positive().optional(),
      atBoilingPointJPerMol: z.number().positive().optional(),
      at298KJPerMol: z.number().positive().optional(),
      source: z.string(),
      basis,
    })
    .optional(),
});

export type Fluid = z.output<typeof fluidSchema>;

const fluidsSchema = z.strictObject({ about: z.string(), rows: z.array(fluidSchema) });

/** Every pure fluid that the tables hold. */
export const fluids: readonly Fluid[] = fluidsSchema.parse(fluidsFile).rows;

const byKey = new Map(
  fluids.flatMap((fluid) =>
    [fluid.cas, fluid.name, ...fluid.aliases].map((key) => [key.toLowerCase(), fluid] as const),
  ),
);

const unknown = (substance: string): { readonly ok: false; readonly error: CalculationError } =>
  fail({
    code: 'CALC_UNKNOWN_SUBSTANCE',
    message: `substance: "${substance}" given; no data for it. Give a CAS number or one of: ${fluids.map(({ name }) => name).join(', ')}`,
    field: 'substance',
    given: substance,
    allowed: 'CAS number or common name of a tabulated fluid',
  });

/**
 * A fluid by CAS number, common name or alias, in any case.
 * @error CALC_UNKNOWN_SUBSTANCE where the tables have no such fluid
 */
export const findFluid = (substance: string): Outcome<Fluid> => {
  const fluid = byKey.get(substance.trim().toLowerCase());
  return fluid === undefined ? unknown(substance) : succeed(fluid);
};
