import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { findFluid } from '../fluid/fluid-data.js';
import { basisSchema } from '../materials/basis.js';
import { normalisedName } from '../materials/material-grade.js';
import rows from './ignition-data.json' with { type: 'json' };

export const gasGroups = ['IIA', 'IIB', 'IIC'] as const;
export type GasGroup = (typeof gasGroups)[number];

export const gasGroupField = z
  .enum(gasGroups)
  .meta({ description: 'Gas group that equipment must be made for' });

const ignitionSchema = z.strictObject({
  name: z.string(),
  cas: z.string(),
  aliases: z.array(z.string()),
  /** In air at 1 bar; it falls with pressure and oxygen. */
  autoignitionTemperatureC: z.number(),
  flashPointC: z.number().optional(),
  lowerExplosionLimitPercent: z.number().positive().optional(),
  gasGroup: z.enum(gasGroups),
  gasGroupSource: z.string(),
  gasGroupBasis: basisSchema,
  source: z.string(),
  basis: basisSchema,
});

export type IgnitionData = z.output<typeof ignitionSchema>;

/** Ignition data of flammable gases and vapours. */
export const ignitionData: readonly IgnitionData[] = z.array(ignitionSchema).parse(rows);

const byName = new Map(
  ignitionData.flatMap((substance) =>
    [substance.name, substance.cas, ...substance.aliases].map(
      (name) => [normalisedName(name), substance] as const,
    ),
  ),
);

/**
 * Ignition data of a substance by common name or CAS number.
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const findIgnitionData = (substance: string): Outcome<IgnitionData> => {
  const own = byName.get(normalisedName(substance));
  if (own !== undefined) return succeed(own);
  const fluid = findFluid(substance);
  const byCas = fluid.ok ? byName.get(normalisedName(fluid.value.cas)) : undefined;
  if (byCas !== undefined) return succeed(byCas);
  return fail({
    code: 'CALC_UNKNOWN_SUBSTANCE',
    message: `substance: ${substance} given; no ignition data are on file for it. Give a common name or CAS number, or enter autoignition temperature and gas group with their source`,
    field: 'substance',
    given: substance,
  });
};
