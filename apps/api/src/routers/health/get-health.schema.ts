import { z } from 'zod';

export const getHealthOutput = z.object({
  /** Whether the database answers. */
  database: z.enum(['answers', 'does not answer']),
});
