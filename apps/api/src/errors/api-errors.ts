import type { TRPC_ERROR_CODE_KEY } from '@trpc/server/rpc';

interface ApiError {
  /** HTTP status of the answer. */
  readonly status: number;
  /** The same in the terms of the transport. */
  readonly transport: TRPC_ERROR_CODE_KEY;
  /** What the person is told: what is wrong and what to do. `{name}` is filled in from the details. */
  readonly text: string;
}

/** Every error that the API can answer with. The code stands in `error.data.reason` of the answer. */
export const apiErrors = {
  SIGN_IN_REQUIRED: {
    status: 401,
    transport: 'UNAUTHORIZED',
    text: 'Nobody is signed in, or the session has ended. Sign in and try again.',
  },
  TOO_MANY_ATTEMPTS: {
    status: 429,
    transport: 'TOO_MANY_REQUESTS',
    text: 'Too many attempts with this e-mail address or from this computer. Wait {wait}, then try again; whoever forgot the password asks the maker for a new one.',
  },
  ROLE_NOT_ALLOWED: {
    status: 403,
    transport: 'FORBIDDEN',
    text: 'This is open to {allowed}; you are signed in as {given}. Ask one of them.',
  },
  ORIGIN_NOT_ALLOWED: {
    status: 403,
    transport: 'FORBIDDEN',
    text: 'The request came from {given}; allowed is {allowed}. Open the product at its own address.',
  },
  NOT_FOUND: {
    status: 404,
    transport: 'NOT_FOUND',
    text: 'There is no {what} with {field} {given}, or it is not yours to see.',
  },
  ROUTE_UNKNOWN: {
    status: 404,
    transport: 'NOT_FOUND',
    text: 'The API has nothing at {given}.',
  },
  METHOD_NOT_ALLOWED: {
    status: 405,
    transport: 'METHOD_NOT_SUPPORTED',
    text: 'This procedure is not called in that way: queries take GET, mutations POST.',
  },
  CHANGED_MEANWHILE: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Somebody else changed this {what} meanwhile: you saw version {given}, it is now version {current}. Load it again; your input is kept.',
  },
  SYSTEM_CHANGED_BY_OTHER: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Meanwhile {by} saved this system, at {at}: you saw version {given}, it is now version {version}. Compare both and save again; your input is kept.',
  },
  INQUIRY_TAKEN_UP: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Inquiry {number} has been taken up by {owner}; only applications engineers change it now. Write to {owner}.',
  },
  CLIENT_HAS_OFFER: {
    status: 409,
    transport: 'CONFLICT',
    text: 'An offer for inquiry {number} was sent to {client}, so the inquiry stays there; {given} was given. Enter a new inquiry for another client.',
  },
  CHOICES_NOT_IN_CATALOGUE: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'The system names items that catalogue {catalogue} does not have there: {problems}',
  },
  PRICE_LIST_UNKNOWN: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'The system names a price list that is not there: {problem}',
  },
  SPECIAL_NOT_POSSIBLE: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'A special vessel of this system cannot be computed: {problem}',
  },
  RELEASE_IN_DOCUMENT: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'A document releases nothing: {field} is {given}; allowed is nothing. An approver releases the offer.',
  },
  OFFER_NOT_POSSIBLE: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'No offer can be made of this system: {problem}',
  },
  OFFER_BLOCKED: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Offer {number} cannot be sent yet: {problems}',
  },
  OFFER_ALREADY_SENT: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Offer {number} was sent and stands as it was sent. Revise it to change anything.',
  },
  OFFER_CHANGED_MEANWHILE: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Somebody else revised or released offer {number} meanwhile. Load it again; nothing of yours was saved.',
  },
  OFFER_OUTDATED: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Offer {number} was made by {given}; {current} are in force now. Revise it, so that items, prices and proof are those of today.',
  },
  OFFER_FOR_ANOTHER_CLIENT: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Offer {number} is addressed to {given}, and its inquiry is now of {client}. Revise it, so that it is addressed to {client}.',
  },
  NOTHING_TO_RELEASE: {
    status: 409,
    transport: 'CONFLICT',
    text: 'No {what} of offer {number} waits for a release.',
  },
  CALCULATION_NOT_POSSIBLE: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'The calculation has no result: {problem}',
  },
  TOO_BUSY: {
    status: 503,
    transport: 'SERVICE_UNAVAILABLE',
    text: 'Too many computations wait already ({waiting}). Try again in a minute; nothing was changed.',
  },
  TOOK_TOO_LONG: {
    status: 504,
    transport: 'GATEWAY_TIMEOUT',
    text: 'The computation was stopped after {seconds} s; nothing was changed. State more of the inquiry, or choose some slots, and try again.',
  },
  GIVEN_UP: {
    status: 499,
    transport: 'CLIENT_CLOSED_REQUEST',
    text: 'Whoever asked did not wait for the answer; the computation was stopped and nothing was changed.',
  },
  CATALOGUE_NO_DRAFT: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Catalogue {name} is {state} and stands as it is. Open a draft to change anything.',
  },
  CATALOGUE_NOT_RELEASABLE: {
    status: 409,
    transport: 'CONFLICT',
    text: 'Catalogue {name} cannot be released yet: {problems}',
  },
  CATALOGUE_INCOMPLETE: {
    status: 422,
    transport: 'UNPROCESSABLE_CONTENT',
    text: 'This catalogue has nothing for {slots}, and every system needs one of each. Add an item and try again.',
  },
  INPUT_NOT_VALID: {
    status: 400,
    transport: 'BAD_REQUEST',
    text: 'The input is not valid: {problems}',
  },
  BODY_NOT_JSON: {
    status: 400,
    transport: 'PARSE_ERROR',
    text: 'The body of the request is not valid JSON. Send one JSON document.',
  },
  CONTENT_TYPE_NOT_ALLOWED: {
    status: 415,
    transport: 'UNSUPPORTED_MEDIA_TYPE',
    text: 'The content type is {given}; allowed is application/json.',
  },
  BODY_TOO_LARGE: {
    status: 413,
    transport: 'PAYLOAD_TOO_LARGE',
    text: 'The body of the request is larger than the allowed {allowed}. Send less at once.',
  },
  FAULT: {
    status: 500,
    transport: 'INTERNAL_SERVER_ERROR',
    text: 'The server failed on this request. Try again; if it happens again, report the request number {request}.',
  },
} as const satisfies Record<string, ApiError>;

export type ApiErrorCode = keyof typeof apiErrors;

type Blanks<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Blanks<Rest>
  : never;

/** What the text of a code leaves open. */
export type ApiErrorDetails<C extends ApiErrorCode> = Readonly<
  Record<Blanks<(typeof apiErrors)[C]['text']>, string | number>
>;

export function apiErrorText<C extends ApiErrorCode>(code: C, details: ApiErrorDetails<C>): string {
  const blanks: Readonly<Record<string, string | number>> = details;
  return apiErrors[code].text.replace(/\{(\w+)\}/g, (_, name: string) => String(blanks[name]));
}
