import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import solutionsFile from './aqueous-solutions.json' with { type: 'json' };

const fit = (coefficients: number) =>
  z.strictObject({
    coefficients: z.array(z.number()).length(coefficients),
    minTemperatureC: z.number(),
    maxTemperatureC: z.number(),
    maxMassFraction: z.number().positive().max(1),
  });

export const aqueousSolutionSchema = z.strictObject({
  name: z.string(),
  cas: z.string().regex(/^\d{2,7}-\d{2}-\d$/),
  aliases: z.array(z.string()),
  molarMassKgPerMol: z.number().positive(),
  /** What bounds the vapour pressure over the solution from above, and up to which mass fraction. */
  vapourPressureBound: z.strictObject({
    kind: z.enum(['water', 'higher of both', 'ideal']),
    maxMassFraction: z.number().positive().max(1),
    basis: z.enum(['published', 'common practice', 'from memory, unverified']),
  }),
  density: fit(5),
  viscosity: fit(6),
  heatCapacity: fit(6),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
});

export type AqueousSolution = z.output<typeof aqueousSolutionSchema>;

/** Every solute in water that the table holds. */
export const aqueousSolutions: readonly AqueousSolution[] = z
  .strictObject({ about: z.string(), rows: z.array(aqueousSolutionSchema) })
  .parse(solutionsFile).rows;

const byKey = new Map(
  aqueousSolutions.flatMap((solution) =>
    [solution.cas, solution.name, ...solution.aliases].map((key) => [key.toLowerCase(), solution] as const),
  ),
);

/**
 * The solution of a solute by CAS number, common name or alias, in any case.
 * @error CALC_UNKNOWN_SUBSTANCE where the table has no such solute
 */
export const findAqueousSolution = (solute: string): Outcome<AqueousSolution> => {
  const solution = byKey.get(solute.trim().toLowerCase());
  return solution === undefined
    ? fail({
        code: 'CALC_UNKNOWN_SUBSTANCE',
        message: `solute: "${solute}" given; no data for its solution in water. Give a CAS number or one of: ${aqueousSolutions.map(({ name }) => name).join(', ')}`,
        field: 'solute',
        given: solute,
        allowed: 'CAS number or common name of a tabulated solute',
      })
    : succeed(solution);
};
