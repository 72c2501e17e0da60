import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { findFluid } from '../fluid/fluid-data.js';
import { basisSchema } from '../materials/basis.js';
import { normalisedName } from '../materials/material-grade.js';
import rows from './substance-hazards.json' with { type: 'json' };

const substanceHazardsSchema = z.strictObject({
  name: z.string(),
  cas: z.string().optional(),
  aliases: z.array(z.string()),
  /** At 20 °C and 1 bar. */
  state: z.enum(['gas', 'liquid']),
  /** A fluid with tables whose vapour pressure this one does not reach: an aqueous solution of a salt, a heavy oil. */
  lessVolatileThan: z.string().optional(),
  /** Hazard classes of Regulation (EC) 1272/2008, in words. */
  hazardClasses: z.string(),
  hazardStatements: z.array(z.string().regex(/^H\d{3}/)),
  /** Closed cup; absent for a gas and for a liquid without a flash point on file. */
  flashPointC: z.number().optional(),
  flashPointSource: z.string().optional(),
  cautions: z.array(z.string()).optional(),
  source: z.string(),
  basis: basisSchema,
});

export type SubstanceHazards = z.output<typeof substanceHazardsSchema>;

/** Hazards of the substances that are put into reactors. A supplier's sheet can be stricter and then governs. */
export const substanceHazards: readonly SubstanceHazards[] = z.array(substanceHazardsSchema).parse(rows);

const byName = new Map(
  substanceHazards.flatMap((substance) =>
    [substance.name, ...substance.aliases, ...(substance.cas === undefined ? [] : [substance.cas])].map(
      (name) => [normalisedName(name), substance] as const,
    ),
  ),
);

/**
 * Hazards of a substance by common name or CAS number.
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const findSubstanceHazards = (substance: string): Outcome<SubstanceHazards> => {
  const own = byName.get(normalisedName(substance));
  if (own !== undefined) return succeed(own);
  const fluid = findFluid(substance);
  const byCas = fluid.ok ? byName.get(normalisedName(fluid.value.cas)) : undefined;
  if (byCas !== undefined) return succeed(byCas);
  return fail({
    code: 'CALC_UNKNOWN_SUBSTANCE',
    message: `substance: ${substance} given; no hazard classes are on file for it. Give a common name or CAS number, or enter the classes of its safety data sheet`,
    field: 'substance',
    given: substance,
  });
};
