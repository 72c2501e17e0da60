import {
  type CatalogueDifference,
  exchangeFormats,
  importReportSchema,
} from '@flangewise/catalogue/exchange';
import { z } from 'zod';
import { madeHere } from '../as-typed.js';
import { seenDraft } from './seen-draft.schema.js';

const notBase64 = 'allowed is the content of the file in base 64, as RFC 4648 §4 has it, with padding';

/** Decoded and measured: a pattern does not get through a text of that size. */
const fileContent = z.string().transform((text, context): Uint8Array => {
  const content = Buffer.from(text, 'base64');
  if (Math.ceil(content.byteLength / 3) * 4 !== text.length) context.addIssue(notBase64);
  return content;
});

export const importFileInput = seenDraft.extend({
  format: z.enum(exchangeFormats),
  contentBase64: fileContent,
  /** Whether the draft is changed, where nothing is in the way; else the file is only looked at. */
  apply: z.boolean(),
});

export const importFileOutput = z.object({
  applied: z.boolean(),
  version: z.int(),
  report: importReportSchema.omit({ catalogue: true }),
  /** What the draft has otherwise by the file; null where something is in the way. */
  difference: madeHere<CatalogueDifference>().nullable(),
});
