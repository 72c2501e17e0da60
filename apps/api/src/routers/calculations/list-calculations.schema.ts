import { sourceReferenceSchema } from '@flangewise/model';
import { z } from 'zod';

const jsonSchema = z.record(z.string(), z.unknown());

export const listCalculationsOutput = z.array(
  z.object({
    id: z.string(),
    title: z.string(),
    /** JSON Schema, each field with unit and symbol. */
    inputs: jsonSchema,
    outputs: jsonSchema,
    /** The method as TeX. */
    formula: z.string(),
    /** Over which inputs it holds. */
    range: z.string(),
    source: z.array(sourceReferenceSchema),
  }),
);
