import { z } from 'zod';

/** Percent with up to two decimals, as text or number. */
export const percent = z
  .union([z.string(), z.number().transform(String)])
  .pipe(
    z
      .string()
      .regex(/^\d{1,2}(\.\d{1,2})?$/, 'a percentage from 0 to 99.99 with up to two decimals is allowed'),
  );

/** Which letter of which offer. */
export const offerLetter = z.object({ id: z.string(), number: z.string(), revision: z.string() });
