import { z } from 'zod';
import { Role } from '../../auth/roles.js';

/** Null when nobody is signed in. */
export const getMeOutput = z
  .object({
    id: z.string(),
    name: z.string(),
    email: z.string(),
    role: z.enum(Role),
    /** The role in words. */
    roleTitle: z.string(),
    clientId: z.string().nullable(),
    /** The company of a customer; null for the maker's own people. */
    client: z.object({ id: z.string(), name: z.string() }).nullable(),
  })
  .nullable();
