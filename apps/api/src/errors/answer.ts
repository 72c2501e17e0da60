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
    /** What the page needs to go on: of SYSTEM_CHANGED_BY_OTHER who saved, when, and what stands there now. */
    readonly details?: Readonly<Record<string, unknown>>;
  };
}

export interface FieldProblem {
  /** For instance `document.vessel.volume`; empty for the whole. */
  readonly field: string;
  /** What stands there, shortened. */
  readonly given?: string;
  /** What is wrong with it and what is allowed. */
  readonly problem: string;
}

/** What an answer carries beyond its text. */
export type Enclosure = Pick<ErrorAnswer['data'], 'fields' | 'details'>;

export function answerWith(code: ApiErrorCode, message: string, enclosed: Enclosure = {}): ErrorAnswer {
  const { status, transport } = apiErrors[code];
  return {
    message,
    code: TRPC_ERROR_CODES_BY_KEY[transport],
    data: { code: transport, httpStatus: status, reason: code, ...enclosed },
  };
}

/** The answer of the server itself, outside of any procedure. */
export function errorAnswer<C extends ApiErrorCode>(code: C, details: ApiErrorDetails<C>): ErrorAnswer {
  return answerWith(code, apiErrorText(code, details));
}
