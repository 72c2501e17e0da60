import { z } from 'zod';

/** One line of a calculation that a reader can redo by hand. */
export const stepSchema = z
  .strictObject({
    symbol: z.string().meta({ description: 'Symbol of the result, for instance e' }),
    formula: z.string().meta({ description: 'The formula in symbols, for instance P Di / (2 f z − P)' }),
    substituted: z.string().meta({ description: 'The formula with the numbers put in' }),
    value: z.union([z.number(), z.string()]),
    unit: z.string().meta({ description: 'UCUM code; 1 for a pure number' }),
    note: z.string().optional().meta({ description: 'A condition, a choice, or "from memory, unverified"' }),
  })
  .readonly();

/** How far a source can be trusted. Anything from memory is said to the user. */
export const basisSchema = z.enum(['published', 'common practice', 'from memory, unverified']);

export const sourceReferenceSchema = z
  .strictObject({
    citation: z
      .string()
      .meta({ description: 'Key in the table of sources, with clause: en-13445-3:2021 §7.4.2' }),
    basis: basisSchema,
  })
  .readonly();

/** The proof of a number: what went in, each step, where the method comes from, over which inputs it holds. */
export const evidenceSchema = z
  .strictObject({
    calculation: z.string(),
    title: z.string(),
    inputs: z.record(z.string(), z.unknown()).readonly(),
    outputs: z.record(z.string(), z.unknown()).readonly(),
    steps: z.array(stepSchema).readonly(),
    source: z.array(sourceReferenceSchema).readonly(),
    range: z.string(),
  })
  .readonly();

export type Step = z.output<typeof stepSchema>;
export type Basis = z.output<typeof basisSchema>;
export type SourceReference = z.output<typeof sourceReferenceSchema>;
export type Evidence = z.output<typeof evidenceSchema>;
