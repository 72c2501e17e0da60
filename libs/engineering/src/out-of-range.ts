import { type CalculationError, fail } from '@flangewise/model';
import { shown } from './shown.js';

interface Excess {
  /** Public name of the field. */
  readonly field: string;
  readonly given: number;
  /** UCUM code; empty for a pure number. */
  readonly unit: string;
  /** What is allowed, with its unit, and what to do where that is not plain. */
  readonly allowed: string;
}

/** A field that passed its schema and still lies outside the range of the method. */
export const outOfRange = ({
  field,
  given,
  unit,
  allowed,
}: Excess): { readonly ok: false; readonly error: CalculationError } =>
  fail({
    code: 'CALC_OUT_OF_RANGE',
    message: `${field}: ${shown(given)}${unit === '' ? '' : ` ${unit}`} given; allowed: ${allowed}`,
    field,
    given,
    allowed,
  });
