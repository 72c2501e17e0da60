import { currencySchema, itemSchema, specialRatesSchema } from '@flangewise/model';
import { z } from 'zod';

/** Prices by this list, else in this currency; where there is no list in it, or none is asked for, by the first list. */
export const getCatalogueInput = z
  .strictObject({ priceList: z.string().optional(), currency: currencySchema.optional() })
  .optional();

export const getCatalogueOutput = z.object({
  revision: z.string(),
  maker: z.string(),
  items: z.array(itemSchema),
  /** Whole list prices by item; null for customers. */
  prices: z.record(z.string(), z.number()).nullable(),
  /** What special vessels cost; null for customers. */
  specialRates: specialRatesSchema.nullable(),
  priceList: z.object({ id: z.string(), currency: z.string() }).nullable(),
  ruleRevision: z.string(),
});
