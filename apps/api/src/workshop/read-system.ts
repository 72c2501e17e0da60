import { readDocument, type System, type SystemInput, systemSchema } from '@flangewise/model';

/** A document that passed its schema before it came here, read. */
export function readSystem(document: SystemInput): System {
  const read = readDocument(systemSchema, document);
  if (read.ok) return read.value;
  throw new Error(`the document passed its schema before: ${JSON.stringify(read.error)}`);
}
