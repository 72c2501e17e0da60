import { z } from 'zod';
import { leastMarginSchema, openPointSchema, statusSchema } from './assessment.js';
import { money } from './offer.js';
import { systemSchema } from './system.js';

const revisions = { catalogueRevision: z.string(), ruleRevision: z.string() };

export const refusalSchema = z.strictObject({
  what: z.string().meta({ description: 'Family or option that was left out' }),
  items: z.int().min(0).meta({ description: 'How many vessels of it' }),
  reason: z.string(),
  frees: z.string().optional().meta({ description: 'The smallest change that would let it in' }),
});

export const candidateSchema = z.strictObject({
  name: z.string(),
  title: z.string(),
  reason: z.string(),
  system: systemSchema.meta({ description: 'Complete choices; the inquiry as it was given' }),
  status: statusSchema,
  price: money.optional().meta({ description: 'List price; absent for customers' }),
  deliveryWeeks: z.int().min(0),
  leastMargin: leastMarginSchema.nullable(),
  special: z.boolean().default(false),
  notes: z
    .array(z.string())
    .default([])
    .meta({ description: 'What this system can do beyond yes or no: highest speed, law that applies' }),
});

export const materialVerdictSchema = z.strictObject({
  material: z.string(),
  status: statusSchema,
  text: z.string(),
});

/** Answer of `solve`: ranked systems that fit, how many there are, and why the others do not. */
export const solveAnswerSchema = z.strictObject({
  ...revisions,
  result: z.enum(['systems found', 'impossible', 'not proved']),
  candidates: z.array(candidateSchema),
  count: z
    .string()
    .nullable()
    .meta({ description: 'Number of complete systems, exact; null when not counted' }),
  cheapestProved: z.boolean(),
  refusals: z.array(refusalSchema),
  findings: z
    .array(z.string())
    .meta({ description: 'What follows from the inquiry alone: hot volume, marking, vapour pressure' }),
  materials: z
    .array(materialVerdictSchema)
    .meta({ description: 'Every wetted material of the range against the media' }),
  openPoints: z.array(openPointSchema),
  cautions: z.array(z.string()),
});

export const narrowAnswerSchema = z.strictObject({
  ...revisions,
  exact: z.boolean(),
  consistent: z.boolean(),
  /** By slot path: what still leads to a valid whole when only this slot is reconsidered. */
  slots: z.record(
    z.string(),
    z.strictObject({
      chosen: z.string().nullable().optional(),
      valid: z.array(z.string().nullable()),
      refused: z.array(z.string().nullable()),
    }),
  ),
});

export const statementSchema = z.strictObject({
  kind: z.enum(['choice', 'inquiry']),
  path: z.string().meta({ description: 'Slot path or field of the inquiry' }),
  value: z.string(),
  text: z.string(),
});

export const changeSchema = z.strictObject({
  text: z.string(),
  changes: z.array(z.strictObject({ path: z.string(), from: z.string(), to: z.string() })),
  /** List price difference; absent where there is nothing to compare. */
  priceDifference: money.optional(),
});

export const explainAnswerSchema = z.strictObject({
  ...revisions,
  result: z.enum(['consistent', 'conflict', 'background inconsistent', 'not proved']),
  conflicts: z.array(
    z.strictObject({
      statements: z.array(statementSchema),
      rules: z.array(z.strictObject({ id: z.string(), title: z.string(), text: z.string() })),
      text: z.string(),
      special: z
        .string()
        .optional()
        .meta({ description: 'The special that would do, where the range ends before what was asked' }),
    }),
  ),
  repairs: z.array(changeSchema),
});

export const offerAnswerSchema = z.strictObject({
  ...revisions,
  files: z.array(z.strictObject({ name: z.string(), bytes: z.int().min(0), mediaType: z.string() })),
  total: money,
  currency: z.string(),
  deliveryWeeks: z.int().min(0),
  released: z.boolean(),
  blocking: z.array(z.string()),
});

export const auditAnswerSchema = z.strictObject({
  ...revisions,
  items: z.int(),
  rules: z.int(),
  deadItems: z.array(z.strictObject({ item: z.string(), reason: z.string() })),
  redundantRules: z.array(z.string()),
  gaps: z.array(z.string()),
});

export type MaterialVerdict = z.output<typeof materialVerdictSchema>;
export type Refusal = z.output<typeof refusalSchema>;
export type Candidate = z.output<typeof candidateSchema>;
export type CandidateInput = z.input<typeof candidateSchema>;
export type SolveAnswer = z.input<typeof solveAnswerSchema>;
export type NarrowAnswer = z.output<typeof narrowAnswerSchema>;
export type Statement = z.output<typeof statementSchema>;
export type Change = z.output<typeof changeSchema>;
export type ExplainAnswer = z.output<typeof explainAnswerSchema>;
export type OfferAnswer = z.output<typeof offerAnswerSchema>;
export type AuditAnswer = z.output<typeof auditAnswerSchema>;
