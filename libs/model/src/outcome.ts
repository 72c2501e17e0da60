/** Expected trouble is a returned value: every service that can fail on its input returns an outcome. */
export type Outcome<T, E = CalculationError> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: E };

export const succeed = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const fail = <E>(error: E): { readonly ok: false; readonly error: E } => ({ ok: false, error });

export const calculationErrorCodes = [
  'CALC_INVALID_INPUT',
  'CALC_OUT_OF_RANGE',
  'CALC_UNKNOWN_CALCULATION',
  'CALC_UNKNOWN_SUBSTANCE',
  'CALC_UNKNOWN_MATERIAL',
  'CALC_MISSING_PROPERTY',
  'CALC_NOT_CONVERGED',
] as const;

export type CalculationErrorCode = (typeof calculationErrorCodes)[number];

/** Why a calculation has no result: which field, what was given, what is allowed. */
export interface CalculationError {
  readonly code: CalculationErrorCode;
  /** What was given, what is allowed and what to do, in words with units. */
  readonly message: string;
  /** Public name of the field that caused it, for instance `temperatureK`. */
  readonly field?: string;
  readonly given?: string | number;
  /** What is allowed, for instance `273.16 to 647.1 K`. */
  readonly allowed?: string;
}
