import { z } from 'zod';
import { currencySchema } from './currency.js';
import { openPointSchema } from './assessment.js';
import { calendarDate } from './typed-text.js';

/** An amount in text, so that no digit is lost. */
export const money = z.string().regex(/^-?\d+\.\d{2}$/);

export const positionSchema = z.strictObject({
  position: z.int().positive(),
  item: z.string(),
  name: z.string(),
  slots: z.array(z.string()),
  quantity: z.int().positive(),
  unitPrice: money,
  total: money,
  special: z.boolean().default(false),
  note: z.string().optional(),
});

export const offerSchema = z.strictObject({
  number: z.string(),
  revision: z.string(),
  state: z.enum(['draft', 'in review', 'sent', 'replaced']),
  title: z.string(),
  client: z.string().optional(),
  date: calendarDate.optional(),
  validUntil: calendarDate.optional(),
  catalogueRevision: z.string(),
  ruleRevision: z.string(),
  priceList: z.string(),
  currency: currencySchema,
  positions: z.array(positionSchema),
  /** What of the positions is alloy surcharge, by material. */
  alloySurcharges: z
    .array(z.strictObject({ material: z.string(), massKg: z.number().min(0), perKg: money, amount: money }))
    .optional(),
  /** Positions with their alloy surcharges: what a search adds up. */
  listTotal: money,
  /** What quantities take off, a line each; negative. */
  quantitySteps: z.array(z.strictObject({ text: z.string(), amount: money })).optional(),
  discountPercent: z.string(),
  discount: money,
  /** Work at the rates of the list, after the discount. */
  services: z.array(z.strictObject({ text: z.string(), amount: money })).optional(),
  net: money,
  taxPercent: z.string(),
  tax: money,
  total: money,
  deliveryWeeks: z.int().min(0),
  deliveryChain: z.array(z.strictObject({ step: z.string(), days: z.int().min(0) })),
  terms: z.array(z.string()),
  openPoints: z.array(openPointSchema),
  cautions: z.array(z.string()),
  /** Present until everything is released; printed across every page. */
  watermark: z.string().optional(),
});

export type Position = z.output<typeof positionSchema>;
export type Offer = z.output<typeof offerSchema>;
