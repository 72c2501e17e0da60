import type { CalculationError } from '@flangewise/model';

/** An error of a property whose temperature came from a field of another name. */
export const relabelled = (
  error: CalculationError,
  field: string,
): { readonly ok: false; readonly error: CalculationError } => ({
  ok: false,
  error:
    error.field === 'temperatureK'
      ? { ...error, field, message: error.message.replace(/^temperatureK/, field) }
      : error,
});
