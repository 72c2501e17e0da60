import { z } from 'zod';
import { assessmentSchema } from './assessment.js';
import {
  auditAnswerSchema,
  explainAnswerSchema,
  narrowAnswerSchema,
  offerAnswerSchema,
  solveAnswerSchema,
} from './answers.js';
import { inquirySchema } from './inquiry.js';
import { itemSchema } from './item.js';
import { offerSchema } from './offer.js';
import { systemSchema } from './system.js';

/** Every document that goes in or out, by its public name. */
export const documentSchemas = {
  inquiry: inquirySchema,
  system: systemSchema,
  assessment: assessmentSchema,
  offer: offerSchema,
  item: itemSchema,
  'solve-answer': solveAnswerSchema,
  'narrow-answer': narrowAnswerSchema,
  'explain-answer': explainAnswerSchema,
  'offer-answer': offerAnswerSchema,
  'audit-answer': auditAnswerSchema,
} as const;

export type DocumentName = keyof typeof documentSchemas;

export const isDocumentName = (name: string): name is DocumentName => Object.hasOwn(documentSchemas, name);

/** JSON Schema (draft 2020-12) of a document as it is written by people: quantities as typed. */
export const jsonSchemaOf = (name: DocumentName): object =>
  z.toJSONSchema(documentSchemas[name], { io: 'input', target: 'draft-2020-12' });
