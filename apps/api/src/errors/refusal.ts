import { TRPCError } from '@trpc/server';
import type { Enclosure } from './answer.js';
import { apiErrors, apiErrorText, type ApiErrorCode, type ApiErrorDetails } from './api-errors.js';

/** Carries a code of the catalogue through the transport. */
export class Refusal extends Error {
  constructor(
    readonly code: ApiErrorCode,
    text: string,
    readonly enclosed: Enclosure = {},
  ) {
    super(text);
  }
}

/** The error to throw from a procedure: `throw refuse('NOT_FOUND', { what: 'inquiry', field: 'id', given: id })`. */
export function refuse<C extends ApiErrorCode>(
  code: C,
  details: ApiErrorDetails<C>,
  enclosed: Enclosure = {},
): TRPCError {
  const cause = new Refusal(code, apiErrorText(code, details), enclosed);
  return new TRPCError({ code: apiErrors[code].transport, message: cause.message, cause });
}
