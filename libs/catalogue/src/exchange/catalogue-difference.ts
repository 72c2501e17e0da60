import { slotNameSchema } from '@flangewise/model';
import { z } from 'zod';

/** One field before and after, as people read it: "82.5 mm"; null where nobody said. */
const fieldChange = z.object({
  path: z.string(),
  label: z.string(),
  before: z.string().nullable(),
  after: z.string().nullable(),
});

const itemHead = z.object({ id: z.string(), slot: slotNameSchema, name: z.string() });

/** What one catalogue has otherwise than another. */
export const catalogueDifferenceSchema = z.object({
  /** Names of the revisions. */
  from: z.string(),
  to: z.string(),
  added: z.array(itemHead),
  removed: z.array(itemHead),
  changed: z.array(itemHead.extend({ fields: z.array(fieldChange) })),
  /** Prices of single items, by price list; null where it has none. */
  prices: z.array(
    itemHead.pick({ id: true, name: true }).extend({
      priceList: z.string(),
      currency: z.string(),
      before: z.string().nullable(),
      after: z.string().nullable(),
    }),
  ),
  /** Validity, rates and other terms of price lists. */
  priceLists: z.array(
    z.object({
      id: z.string(),
      kind: z.enum(['added', 'removed', 'changed']),
      fields: z.array(fieldChange),
    }),
  ),
  /** Rows of the tables of rules. */
  tables: z.array(fieldChange),
});

export type FieldChange = z.output<typeof fieldChange>;
export type CatalogueDifference = z.output<typeof catalogueDifferenceSchema>;
