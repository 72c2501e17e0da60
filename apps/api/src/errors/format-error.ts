import type { TRPCError } from '@trpc/server';
import { ZodError } from 'zod';
import { answerWith, errorAnswer, type ErrorAnswer, type FieldProblem } from './answer.js';
import { Refusal } from './refusal.js';

function fieldProblems(error: ZodError): readonly FieldProblem[] {
  return error.issues.map((issue) => ({ field: issue.path.join('.'), problem: issue.message }));
}

function describe(error: TRPCError, path: string, request: string): ErrorAnswer {
  if (error.cause instanceof Refusal) return answerWith(error.cause.code, error.cause.message);
  if (error.code === 'PARSE_ERROR') return errorAnswer('BODY_NOT_JSON', {});
  if (error.code === 'NOT_FOUND') return errorAnswer('ROUTE_UNKNOWN', { given: path });
  if (error.code === 'METHOD_NOT_SUPPORTED') return errorAnswer('METHOD_NOT_ALLOWED', {});
  if (error.code === 'UNSUPPORTED_MEDIA_TYPE')
    return errorAnswer('CONTENT_TYPE_NOT_ALLOWED', { given: 'another one' });
  if (error.code === 'BAD_REQUEST' && error.cause instanceof ZodError) {
    const fields = fieldProblems(error.cause);
    const problems = fields.map(({ field, problem }) => (field === '' ? problem : `${field}: ${problem}`));
    const answer = errorAnswer('INPUT_NOT_VALID', { problems: problems.join('; ') });
    return { ...answer, data: { ...answer.data, fields } };
  }
  return errorAnswer('FAULT', { request });
}

/** Turns whatever a procedure threw into an answer of the catalogue; what is not in it becomes a fault without its inner text. */
export function formatError(error: TRPCError, path: string | undefined, request: string): ErrorAnswer {
  const answer = describe(error, path ?? '', request);
  return path === undefined ? answer : { ...answer, data: { ...answer.data, path } };
}
