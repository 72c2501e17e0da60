import type { z } from 'zod';
import { apart, issueText } from './issue-text.js';
import { valueAt } from './value-at.js';
import { fail, type Outcome, succeed } from './outcome.js';

/** A field of a document that cannot be used: where it stands, what was given, what is allowed. */
export interface InputTrouble {
  readonly path: string;
  readonly given: string;
  readonly message: string;
}

/** Where something stands in a document: `sets[0].stirrer`. */
export const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, key) =>
      typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`,
    '',
  );

/** The issues inside a union of alternatives: those of the alternative that came closest. */
const flatten = (issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] => {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [issue];
  const nearest = [...issue.errors].sort((a, b) => a.length - b.length)[0] ?? [];
  return nearest.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }) as z.core.$ZodIssue);
};

/**
 * Reads a document: all troubles at once, each with the path of the field, what stands there and what is allowed.
 * Nothing of the input is changed or dropped.
 */
export const readDocument = <S extends z.ZodType>(
  schema: S,
  document: unknown,
): Outcome<z.output<S>, readonly InputTrouble[]> => {
  const parsed = schema.safeParse(document);
  if (parsed.success) return succeed(parsed.data);
  return fail(
    parsed.error.issues
      .flatMap(flatten)
      .flatMap(apart)
      .map((issue) => {
        const given = valueAt(document, issue.path);
        return {
          path: pathText(issue.path),
          given: given === undefined ? 'nothing' : JSON.stringify(given).slice(0, 120),
          message: issueText(schema, issue, document),
        };
      }),
  );
};
