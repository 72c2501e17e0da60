import { z } from 'zod';
import { Role } from '../../auth/roles.js';

export const getMeOutput = z.object({
  name: z.string(),
  email: z.string(),
  role: z.enum(Role),
  /** The role in words. */
  roleTitle: z.string(),
  /** The company of a customer; null for the maker's own people. */
  client: z.object({ id: z.string(), name: z.string() }).nullable(),
});
