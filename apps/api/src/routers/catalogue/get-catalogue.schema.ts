import { currencySchema, type Item, specialRatesSchema } from '@flangewise/model';
import { z } from 'zod';
import { madeHere } from '../as-typed.js';

/** Prices by this list, else in this currency; where there is no list in it, or none is asked for, by the first list. */
export const getCatalogueInput = z
  .strictObject({
    priceList: z.string().optional(),
    currency: currencySchema.optional(),
    /** Name of a released catalogue; the one in force where nobody says. */
    revision: z.string().max(64).optional(),
  })
  .optional();

export const getCatalogueOutput = z.object({
  revision: z.string(),
  maker: z.string(),
  items: madeHere<readonly Item[]>(),
  /** Whole list prices by item; null for customers. */
  prices: z.record(z.string(), z.number()).nullable(),
  /** What special vessels cost; null for customers. */
  specialRates: specialRatesSchema.nullable(),
  priceList: z.object({ id: z.string(), currency: z.string() }).nullable(),
  ruleRevision: z.string(),
});
