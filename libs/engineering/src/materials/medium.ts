import { z } from 'zod';
import { fail, type Outcome, succeed } from '@flangewise/model';
import { findFluid } from '../fluid/fluid-data.js';
import { normalisedName } from './material-grade.js';
import rows from './media.json' with { type: 'json' };

const mediumSchema = z.strictObject({
  key: z.string(),
  /** Common names and the CAS number. */
  aliases: z.array(z.string()),
  /** Kinds that corrosion rows may name instead of the medium: `ketone`, `alkali`. */
  families: z.array(z.string()),
  /** What the name itself says about moisture: `chlorine, dry`. */
  implies: z.strictObject({ dry: z.literal(true).optional(), moist: z.literal(true).optional() }).optional(),
});

export type Medium = z.output<typeof mediumSchema>;

/** Media that corrosion rows speak of. */
export const media: readonly Medium[] = z.array(mediumSchema).parse(rows);

const mediumByName = new Map(
  media.flatMap((medium) =>
    [medium.key, ...medium.aliases].map((name) => [normalisedName(name), medium] as const),
  ),
);

/**
 * A medium by its common name or CAS number.
 * @error CALC_UNKNOWN_SUBSTANCE
 */
export const mediumOf = (name: string): Outcome<Medium> => {
  const medium = mediumByName.get(normalisedName(name));
  if (medium !== undefined) return succeed(medium);
  const fluid = findFluid(name);
  const byCas = fluid.ok ? mediumByName.get(normalisedName(fluid.value.cas)) : undefined;
  if (byCas !== undefined) return succeed(byCas);
  return fail({
    code: 'CALC_UNKNOWN_SUBSTANCE',
    message: `medium: ${name} given; no corrosion data are on file for it. Give a common name or CAS number, or enter a tested verdict with its source`,
    field: 'medium',
    given: name,
  });
};
