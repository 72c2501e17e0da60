import { type InquiryInput, inquirySchema, readDocument, succeed } from '@flangewise/model';
import type { Terminal } from '../terminal.js';
import { invalidFields, type OrRefusal, refuse } from '../trouble.js';
import { readJson } from './read-json.js';

const isRecord = (document: unknown): document is Readonly<Record<string, unknown>> =>
  typeof document === 'object' && document !== null && !Array.isArray(document);

/** A system holds its inquiry in a field of that name; an inquiry has none. */
export const isSystemDocument = (document: unknown): boolean => isRecord(document) && 'inquiry' in document;

/** An inquiry as it was typed, once it is known to fit its schema. */
export const checkInquiry = (document: unknown): OrRefusal<InquiryInput> => {
  if (isSystemDocument(document)) {
    return refuse({
      code: 'INPUT_INVALID',
      path: 'inquiry',
      given: 'a system',
      message: 'this command takes an inquiry; give what stands in the field "inquiry" of the system alone',
    });
  }
  const read = readDocument(inquirySchema, document);
  return read.ok ? succeed(document as InquiryInput) : refuse(...invalidFields(read.error));
};

/** Reads an inquiry from a file, or from standard input for `-`. */
export const readInquiry = async (path: string, terminal: Terminal): Promise<OrRefusal<InquiryInput>> => {
  const document = await readJson(path, terminal);
  return document.ok ? checkInquiry(document.value) : document;
};
