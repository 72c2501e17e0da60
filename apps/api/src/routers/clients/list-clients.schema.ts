import { z } from 'zod';

export const listClientsOutput = z.array(
  z.object({
    name: z.string(),
    /** Whether somebody of the client signs in, and so sees its inquiries. */
    hasPeople: z.boolean(),
  }),
);
