import { z } from 'zod';
import data from './impeller-constants.json';

export const impellerTypes = [
  'disc turbine',
  'pitched blade turbine',
  'paddle',
  'magnetic bar',
  'propeller',
  'hydrofoil',
  'hollow shaft turbine',
  'anchor',
  'helical ribbon',
  'double helical ribbon',
] as const;

export type ImpellerType = (typeof impellerTypes)[number];

const basis = z.enum(['published', 'common practice', 'from memory, unverified']);
const cited = { source: z.string().min(1), basis };
const constant = z.strictObject({ value: z.number().positive(), ...cited });
const range = z.strictObject({ low: z.number().positive(), high: z.number().positive(), ...cited });

const common = {
  impeller: z.enum(impellerTypes),
  /** Low and high end of the power number as factors of its central value. */
  band: range,
  metznerOtto: z.strictObject({
    value: z.number().positive(),
    low: z.number().positive(),
    high: z.number().positive(),
    ...cited,
  }),
  zwietering: range.nullable(),
  viscosityPaS: z.strictObject({ lower: z.number().min(0), upper: z.number().positive(), ...cited }),
};

const row = z.discriminatedUnion('curve', [
  z.strictObject({
    curve: z.literal('blades'),
    blades: z.strictObject({
      count: z.int().positive(),
      widthOverDiameter: z.number().positive(),
      angleDeg: z.number().positive().max(90),
    }),
    ...common,
  }),
  z.strictObject({
    curve: z.literal('constants'),
    laminarConstant: constant,
    turbulentPowerNumber: constant,
    ...common,
  }),
  z.strictObject({
    curve: z.literal('anchor'),
    laminarConstant: constant,
    turbulentPowerNumber: constant,
    ...common,
  }),
  z.strictObject({
    curve: z.literal('ribbon'),
    ribbon: z.strictObject({
      count: z.int().positive(),
      pitchOverDiameter: z.number().positive(),
      widthOverDiameter: z.number().positive(),
    }),
    turbulentPowerNumber: constant,
    ...common,
  }),
]);

export type SourcedConstant = z.output<typeof constant>;
export type ImpellerConstants = z.output<typeof row>;

const rows = new Map(
  z
    .array(row)
    .parse(data)
    .map((constants) => [constants.impeller, constants]),
);

/** Constants of an impeller type, each with source and basis. Every type has a row (held by a test). */
export const impellerConstantsOf = (impeller: ImpellerType): ImpellerConstants => {
  const found = rows.get(impeller);
  if (found === undefined) throw new Error(`impeller-constants.json has no row for ${impeller}`);
  return found;
};
