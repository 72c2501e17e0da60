import { z } from 'zod';

export const currencySchema = z.enum(['EUR', 'GBP', 'USD', 'CHF']);

export type Currency = z.output<typeof currencySchema>;
