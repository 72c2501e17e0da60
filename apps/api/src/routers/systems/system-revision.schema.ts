import { z } from 'zod';

/** A frozen state of a system, by what it was proved. */
export const systemRevision = z.object({
  number: z.int(),
  author: z.string(),
  createdAt: z.iso.datetime(),
  catalogueRevision: z.string(),
  ruleRevision: z.string(),
});
