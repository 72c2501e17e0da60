import { z } from 'zod';
import { percentText } from './typed-text.js';

/** An amount that is charged: `12.50`. */
const amount = z.string().regex(/^\d+(\.\d{2})?$/, 'an amount like 12.50 is allowed');

/** What the alloys in a part cost on top of its list price, by its mass. */
export const alloySurchargeSchema = z.strictObject({
  material: z.string().meta({ description: 'Material that weighs; under a lining what carries it' }),
  perKg: amount.meta({ description: 'Surcharge per kilogram of the part' }),
});

/** What is taken off a line from a quantity on; the highest step that is reached counts. */
export const quantityStepSchema = z.strictObject({
  from: z.int().min(2).meta({ description: 'Pieces on one line' }),
  percent: percentText,
});

/** Work that is charged by time. */
export const serviceRateSchema = z.strictObject({
  service: z
    .string()
    .regex(/^[a-z][a-z-]*$/)
    .meta({ description: 'Key', examples: ['commissioning'] }),
  title: z.string().min(1),
  unit: z.enum(['hour', 'day', 'visit']),
  rate: amount,
});

/** Work that a client wants with a system. */
export const wantedServiceSchema = z.strictObject({
  service: z.string().min(1).meta({ description: 'Key of a service rate of the price list' }),
  quantity: z.number().positive().max(1000).meta({ description: 'In the unit of the rate' }),
});

export type AlloySurcharge = z.output<typeof alloySurchargeSchema>;
export type QuantityStep = z.output<typeof quantityStepSchema>;
export type ServiceRate = z.output<typeof serviceRateSchema>;
export type WantedService = z.output<typeof wantedServiceSchema>;
