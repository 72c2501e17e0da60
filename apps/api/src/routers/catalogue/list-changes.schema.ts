import { z } from 'zod';
import { CatalogueAction } from '../../generated/enums.js';
import { id } from '../as-typed.js';

export const listChangesInput = z.object({ id });

export const listChangesOutput = z.object({
  changes: z.array(
    z.object({
      /** The version that the draft had after it. */
      version: z.int(),
      action: z.enum(CatalogueAction),
      /** Number of the item, id of the price list, or format of the file; null where the whole is meant. */
      subject: z.string().nullable(),
      /** What stood there before and what stands there now; of a price list the prices that changed, of an import its figures. */
      before: z.unknown(),
      after: z.unknown(),
      author: z.string(),
      at: z.iso.datetime(),
    }),
  ),
});
