import { z } from 'zod';
import { evidenceSchema, sourceReferenceSchema } from './evidence.js';

export const statuses = [
  'met',
  'met with caution',
  'not met',
  'outside standard range',
  'not decidable',
] as const;
export const statusSchema = z.enum(statuses);
export type Status = z.output<typeof statusSchema>;

/** Worst first: what blocks, what is unknown, what needs release, what needs care. */
export const statusRank: Readonly<Record<Status, number>> = {
  'not met': 0,
  'not decidable': 1,
  'outside standard range': 2,
  'met with caution': 3,
  met: 4,
};

export const worstStatus = (list: readonly Status[]): Status =>
  list.reduce<Status>((worst, next) => (statusRank[next] < statusRank[worst] ? next : worst), 'met');

/** One rule on one system: what is demanded, what the part can give, what is left. */
export const ruleResultSchema = z.strictObject({
  rule: z.string().meta({ description: 'Id of the rule', examples: ['stirring.coupling-torque'] }),
  title: z.string(),
  kind: z.enum(['hard', 'caution', 'advice']),
  group: z.string(),
  status: statusSchema,
  slots: z.array(z.string()).meta({ description: 'Slot paths, for instance sets[0].stirrer' }),
  set: z.int().min(0).optional(),
  demand: z.union([z.number(), z.string()]).optional(),
  limit: z.union([z.number(), z.string()]).optional(),
  unit: z.string().meta({ description: 'UCUM code of demand and limit; pressures are gauge' }),
  /** What stands before the limit, as text for people with unit: "1.85 of 1.90 L". */
  shown: z.string().optional(),
  utilisation: z.number().optional().meta({ unit: '1', description: 'Share of the limit that is used' }),
  reserve: z.number().optional().meta({ description: 'What is left, in `unit`' }),
  text: z.string(),
  missing: z
    .array(z.string())
    .default([])
    .meta({ description: 'Fields or published values that are missing' }),
  source: z.array(sourceReferenceSchema),
  evidence: z.array(evidenceSchema).default([]),
});

export type RuleResult = z.output<typeof ruleResultSchema>;

/** A question to the client, or to the engineer: what is missing and what depends on it. */
export const openPointSchema = z.strictObject({
  field: z.string().meta({ examples: ['process.pressureMeans'] }),
  question: z.string(),
  why: z.string(),
  rules: z.array(z.string()).default([]),
});

export type OpenPoint = z.output<typeof openPointSchema>;

/** How the vessels are classed in law, each with the table that was used; never a certificate. */
export const conformitySchema = z.strictObject({
  set: z.int().min(0),
  region: z.enum(['European Union', 'Great Britain', 'United States']),
  category: z.string(),
  fluidGroup: z.int().min(1).max(2).optional(),
  statement: z.string(),
  testPressurePaGauge: z.number().optional().meta({ unit: 'Pa' }),
  modules: z.array(z.string()).default([]),
  source: z.array(sourceReferenceSchema),
});

export type Conformity = z.output<typeof conformitySchema>;

export const leastMarginSchema = z.strictObject({
  value: z.number().meta({
    unit: '1',
    description:
      '1 − utilisation of the tightest hard check that could be decided. A limit that may be used up in full, such as a rating or a place on the frame, counts once it is exceeded; a special is reviewed by itself.',
  }),
  rule: z.string(),
  title: z.string(),
});

export const assessmentSchema = z.strictObject({
  catalogueRevision: z.string(),
  ruleRevision: z.string(),
  status: statusSchema,
  leastMargin: leastMarginSchema.nullable(),
  results: z.array(ruleResultSchema),
  openPoints: z.array(openPointSchema),
  cautions: z.array(z.string()),
  conformity: z.array(conformitySchema),
  /** Slots that nobody has chosen yet. */
  undecided: z.array(z.string()),
  releasable: z.boolean().meta({ description: 'No not met, nothing undecidable, no unreleased special' }),
  blocking: z.array(z.string()),
});

export type Assessment = z.output<typeof assessmentSchema>;
export type LeastMargin = z.output<typeof leastMarginSchema>;
