import { type InquiryInput, inquirySchema, readDocument, succeed } from '@flangewise/model';
import type { Terminal } from '../terminal.js';
import { invalidFields, type OrRefusal, refuse } from '../trouble.js';
import { readJson } from './read-json.js';

const isRecord = (document: unknown): document is Readonly<Record<string, unknown>> =>
  typeof document === 'object' && document !== null && !Array.isArray(document);

/** A system holds its inquiry in a field of that name; an inquiry has none. */
export const isSystemDocument = (document: unknown): boolean => isRecord(document) && 'inquiry' in document;

/** What only an inquiry holds at its root. */
export const isInquiryDocument = (document: unknown): boolean =>
  isRecord(document) && !isSystemDocument(document) && 'title' in document && 'process' in document;

/** An inquiry as it was typed, once it is known to fit its schema. */
export const checkInquiry = (document: unknown): OrRefusal<InquiryInput> => {
  if (isSystemDocument(document)) {
    return refuse({
      code: 'INPUT_INVALID',
      message:
        'this document is a system, and this command takes an inquiry; "check" takes a system, and its field "inquiry" holds the inquiry',
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
