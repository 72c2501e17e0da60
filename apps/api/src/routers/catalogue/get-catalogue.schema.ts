import { itemSchema } from '@flangewise/model';
import { z } from 'zod';

export const getCatalogueOutput = z.object({
  revision: z.string(),
  maker: z.string(),
  items: z.array(itemSchema),
  /** Whole list prices by item; null for customers. */
  prices: z.record(z.string(), z.number()).nullable(),
  priceList: z.object({ id: z.string(), currency: z.string() }).nullable(),
  ruleRevision: z.string(),
});
