import { z } from 'zod';
import { coverPort } from './cover-port.js';
import { itemNumber } from './item-life.js';

const common = {
  set: z.int().min(0).default(0),
  basedOn: itemNumber.meta({ description: 'Item of the range that it is made like' }),
  releasedBy: z.string().optional(),
};

/** A part that stands in no price list: made like one of the range with other ports, or longer; to be released. */
export const specialPartSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('cover'),
    ...common,
    ports: z
      .array(coverPort)
      .min(1)
      .max(40)
      .meta({ description: 'Its ports, instead of those of the range' }),
  }),
  z.strictObject({
    kind: z.literal('shaft'),
    ...common,
    lengthM: z.number().positive().max(3).meta({ unit: 'm', description: 'Free length below the bearing' }),
  }),
]);

export type SpecialPartWish = z.output<typeof specialPartSchema>;
