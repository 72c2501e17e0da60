import { assessmentSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { id, typedDocument } from '../as-typed.js';
import { systemRevision } from './system-revision.schema.js';

export const getSystemInput = z.object({ id });

export const getSystemOutput = z.object({
  id: z.string(),
  inquiryId: z.string(),
  /** Its letter within the inquiry. */
  name: z.string(),
  title: z.string(),
  document: typedDocument(systemSchema),
  version: z.int(),
  updatedAt: z.iso.datetime(),
  /** The newest first. */
  revisions: z.array(systemRevision),
  assessment: assessmentSchema,
  /** Choices that the catalogue in force no longer serves. */
  unknownItems: z.array(z.object({ field: z.string(), given: z.string().optional(), problem: z.string() })),
});
