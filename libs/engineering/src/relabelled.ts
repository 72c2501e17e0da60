import type { CalculationError } from '@flangewise/model';

/**
 * An error of a calculation inside another one, told in the names of the outer fields.
 *
 * @param names outer name of each inner field, for instance `{ temperatureK: 'hotTemperatureK' }`
 */
export const relabelled = (
  error: CalculationError,
  names: Readonly<Record<string, string>>,
): { readonly ok: false; readonly error: CalculationError } => {
  const outer = error.field === undefined ? undefined : names[error.field];
  return {
    ok: false,
    error:
      outer === undefined || error.field === undefined
        ? error
        : {
            ...error,
            field: outer,
            message: error.message.startsWith(error.field)
              ? `${outer}${error.message.slice(error.field.length)}`
              : error.message,
          },
  };
};
