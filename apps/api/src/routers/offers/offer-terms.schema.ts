import { percentText } from '@flangewise/model';
import { z } from 'zod';

/** Percent with up to two decimals, as text or number. */
export const percent = z.union([z.string(), z.number().transform(String)]).pipe(percentText);

/** Which letter of which offer. */
export const offerLetter = z.object({ id: z.string(), number: z.string(), revision: z.string() });
