import { type InputTrouble, readDocument } from '@flangewise/model';
import { z } from 'zod';

/** Characters that JSON can carry and the database cannot keep: NUL, and halves of a pair that stand alone. */
const unstorable = /\0|\p{Surrogate}/u;

const storable = 'allowed is text without NUL characters and without halves of surrogate pairs';

/** Path of the first text that cannot be stored; undefined where all can. */
function unstorablePath(value: unknown, path = ''): string | undefined {
  if (typeof value === 'string') return unstorable.test(value) ? path : undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const found = unstorablePath(inner, path === '' ? key : `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Everything that keeps a document from being used or stored. */
export function troublesOf(schema: z.ZodType, document: unknown): InputTrouble[] {
  const path = unstorablePath(document);
  if (path !== undefined) return [{ path, given: 'a character that cannot be stored', message: storable }];
  const read = readDocument(schema, document);
  return read.ok ? [] : [...read.error];
}

/**
 * A document of the trade as it came: checked against its schema, and handed on and stored as people typed it. Each trouble
 * names the field, what stands there and what is allowed.
 */
export const asTyped = <S extends z.ZodType>(schema: S) =>
  z.custom<z.input<S>>().superRefine((document, context) => {
    for (const { path, given, message } of troublesOf(schema, document))
      context.addIssue({ code: 'custom', message, params: { path, given } });
  });

/** A document that is stored or was made here: not checked once more on its way out. */
export const typedDocument = <S extends z.ZodType>(_: S) => z.custom<z.input<S>>();

/** The same of what has no schema. */
export const madeHere = <T>() => z.custom<T>();

/** A field that cannot be used, on its way out. */
export const inputTrouble = z.object({ path: z.string(), given: z.string(), message: z.string() });

/** The id of a row. */
export const id = z
  .string()
  .regex(/^[\w-]{1,64}$/, 'an id of up to 64 letters, digits and hyphens is allowed');
