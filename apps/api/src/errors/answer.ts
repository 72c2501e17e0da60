import { TRPC_ERROR_CODES_BY_KEY } from '@trpc/server/rpc';
import { apiErrors, apiErrorText, type ApiErrorCode, type ApiErrorDetails } from './api-errors.js';

/** How an error looks on the wire, whether a procedure or the server itself found it. */
export interface ErrorAnswer {
  readonly message: string;
  /** Number of the transport's code, as JSON-RPC has them. */
  readonly code: (typeof TRPC_ERROR_CODES_BY_KEY)[keyof typeof TRPC_ERROR_CODES_BY_KEY];
  readonly data: {
    readonly code: string;
    readonly httpStatus: number;
    readonly reason: ApiErrorCode;
    readonly path?: string;
    /** Of an input: which field, and what is wrong with it. */
    readonly fields?: readonly FieldProblem[];
  };
}

export interface FieldProblem {
  /** For instance `document.vessel.volume`; empty for the whole. */
  readonly field: string;
  readonly problem: string;
}

export function answerWith(code: ApiErrorCode, message: string): ErrorAnswer {
  const { status, transport } = apiErrors[code];
  return {
    message,
    code: TRPC_ERROR_CODES_BY_KEY[transport],
    data: { code: transport, httpStatus: status, reason: code },
  };
}

/** The answer of the server itself, outside of any procedure. */
export function errorAnswer<C extends ApiErrorCode>(code: C, details: ApiErrorDetails<C>): ErrorAnswer {
  return answerWith(code, apiErrorText(code, details));
}
