import type { TRPCError } from '@trpc/server';
import { z, ZodError } from 'zod';
import { answerWith, errorAnswer, type ErrorAnswer, type FieldProblem } from './answer.js';
import { apiErrorText } from './api-errors.js';
import { Refusal } from './refusal.js';
import { problemText } from './refuse-fields.js';

/** What a document of the trade says of a field that it cannot use; see `routers/as-typed.ts`. */
const troubleParams = z.object({ path: z.string(), given: z.string() });

function fieldProblems(error: ZodError): readonly FieldProblem[] {
  return error.issues.map((issue) => {
    const params: unknown = issue.code === 'custom' ? issue.params : undefined;
    const trouble = troubleParams.safeParse(params);
    const path = issue.path.map(String);
    if (!trouble.success) return { field: path.join('.'), problem: issue.message };
    const { path: inside, given } = trouble.data;
    return {
      field: [...path, inside].filter((part) => part !== '').join('.'),
      given,
      problem: issue.message,
    };
  });
}

function describe(error: TRPCError, path: string, request: string): ErrorAnswer {
  if (error.cause instanceof Refusal) {
    const { code, message, enclosed } = error.cause;
    return answerWith(code, message, enclosed);
  }
  if (error.code === 'PARSE_ERROR') return errorAnswer('BODY_NOT_JSON', {});
  if (error.code === 'NOT_FOUND') return errorAnswer('ROUTE_UNKNOWN', { given: path });
  if (error.code === 'METHOD_NOT_SUPPORTED') return errorAnswer('METHOD_NOT_ALLOWED', {});
  if (error.code === 'UNSUPPORTED_MEDIA_TYPE')
    return errorAnswer('CONTENT_TYPE_NOT_ALLOWED', { given: 'another one' });
  if (error.code === 'BAD_REQUEST' && error.cause instanceof ZodError) {
    const fields = fieldProblems(error.cause);
    const problems = fields.map(problemText).join('; ');
    return answerWith('INPUT_NOT_VALID', apiErrorText('INPUT_NOT_VALID', { problems }), { fields });
  }
  return errorAnswer('FAULT', { request });
}

/** Turns whatever a procedure threw into an answer of the catalogue; what is not in it becomes a fault without its inner text. */
export function formatError(error: TRPCError, path: string | undefined, request: string): ErrorAnswer {
  const answer = describe(error, path ?? '', request);
  return path === undefined ? answer : { ...answer, data: { ...answer.data, path } };
}
