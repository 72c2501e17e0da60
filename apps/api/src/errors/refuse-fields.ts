import type { InputTrouble } from '@flangewise/model';
import type { TRPCError } from '@trpc/server';
import type { FieldProblem } from './answer.js';
import { refuse } from './refusal.js';

/** What is wrong with a field, in one sentence. */
export const problemText = ({ field, given, problem }: FieldProblem): string =>
  `${field === '' ? '' : `${field}: `}${given === undefined ? '' : `${given} given; `}${problem}`;

/** The error to throw where an input fits its schema and not what is stored. */
export function refuseFields(troubles: readonly InputTrouble[]): TRPCError {
  const fields = troubles.map(({ path, given, message }) => ({ field: path, given, problem: message }));
  return refuse('INPUT_NOT_VALID', { problems: fields.map(problemText).join('; ') }, { fields });
}
