import { type CalculationError, fail } from '@flangewise/model';

/** The answer where an optional input is absent that the chosen method needs. */
export const missingInput = (
  field: string,
  reason: string,
): { readonly ok: false; readonly error: CalculationError } =>
  fail({ code: 'CALC_INVALID_INPUT', message: `${field}: not given; ${reason}`, field, allowed: reason });
