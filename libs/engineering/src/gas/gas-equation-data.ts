import { z } from 'zod';
import gasEquationsFile from './gas-equations.json' with { type: 'json' };

const numbers = z.array(z.number());

const termsSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('power'), n: numbers, d: numbers, t: numbers, l: numbers }),
  z.strictObject({
    kind: z.literal('gaussian'),
    n: numbers,
    d: numbers,
    t: numbers,
    eta: numbers,
    epsilon: numbers,
    beta: numbers,
    gamma: numbers,
  }),
  z.strictObject({
    kind: z.literal('gaob'),
    n: numbers,
    d: numbers,
    t: numbers,
    eta: numbers,
    epsilon: numbers,
    beta: numbers,
    gamma: numbers,
    b: numbers,
  }),
  z.strictObject({
    kind: z.literal('nonanalytic'),
    n: numbers,
    a: numbers,
    b: numbers,
    beta: numbers,
    A: numbers,
    B: numbers,
    C: numbers,
    D: numbers,
  }),
]);

export type ResidualTerms = z.output<typeof termsSchema>;

/** A reference equation of state: residual Helmholtz energy αr(δ, τ), δ = ρ/ρ_r, τ = T_r/T. */
export const gasEquationSchema = z.strictObject({
  gas: z.string(),
  cas: z.string().regex(/^\d{2,7}-\d{2}-\d$/),
  aliases: z.array(z.string()),
  molarMassKgPerMol: z.number().positive(),
  gasConstantJPerMolK: z.number().positive(),
  reducingTemperatureK: z.number().positive(),
  reducingDensityMolPerM3: z.number().positive(),
  criticalTemperatureK: z.number().positive(),
  maxTemperatureK: z.number().positive(),
  maxPressurePa: z.number().positive(),
  terms: z.array(termsSchema),
  source: z.string(),
  basis: z.enum(['published', 'common practice', 'from memory, unverified']),
});

export type GasEquation = z.output<typeof gasEquationSchema>;

export const gasEquations: readonly GasEquation[] = z
  .strictObject({ about: z.string(), rows: z.array(gasEquationSchema) })
  .parse(gasEquationsFile).rows;

const byKey = new Map(
  gasEquations.flatMap((equation) =>
    [equation.cas, equation.gas, ...equation.aliases].map((key) => [key.toLowerCase(), equation] as const),
  ),
);

/** The reference equation of a gas by CAS number, name or alias, if there is one. */
export const findGasEquation = (gas: string): GasEquation | undefined => byKey.get(gas.trim().toLowerCase());
