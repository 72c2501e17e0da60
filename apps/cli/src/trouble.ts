import type { CalculationErrorCode, InputTrouble, Outcome } from '@flangewise/model';
import type { QuotationTrouble } from '@flangewise/quotation';
import { type ExitCode, exitCodes } from './exit-code.js';

/** Codes of what can be wrong with a command; calculations and quotation bring their own. */
export const troubleCodes = {
  USAGE: 'The command line itself cannot be read',
  INPUT_NOT_FOUND: 'There is no such file',
  INPUT_UNREADABLE: 'The file cannot be read',
  INPUT_TOO_LARGE: 'The file is larger than a document can be',
  INPUT_NOT_JSON: 'The text is not JSON',
  INPUT_INVALID: 'A field holds what is not allowed there',
  INPUT_UNKNOWN_ITEM: 'An item number that the range does not have',
  INPUT_WRONG_SLOT: 'An item stands in a slot to which it does not belong',
  INPUT_ITEM_WITHDRAWN: 'An item that is no longer made',
  INPUT_SLOT_EMPTY: 'A slot that may not be empty is said to be empty',
  SYSTEM_INCOMPLETE: 'Slots are not chosen yet',
  OUTPUT_NOT_EMPTY: 'The folder holds files that are not those of an offer',
  OUTPUT_UNWRITABLE: 'The folder cannot be written',
} as const;

export type TroubleCode = keyof typeof troubleCodes | CalculationErrorCode | QuotationTrouble['code'];

/** One thing that is wrong: where, what was given, what is allowed and what to do. */
export interface Trouble {
  readonly code: TroubleCode;
  readonly path?: string;
  readonly given?: string;
  readonly message: string;
}

/** Why a command has no answer: every trouble at once. */
export interface Refusal {
  readonly exit: ExitCode;
  readonly troubles: readonly Trouble[];
}

export const refuse = (...troubles: readonly Trouble[]): { readonly ok: false; readonly error: Refusal } => ({
  ok: false,
  error: { exit: exitCodes.badInput, troubles },
});

/** Troubles of a document that does not fit its schema. */
export const invalidFields = (troubles: readonly InputTrouble[]): readonly Trouble[] =>
  troubles.map((trouble) => ({ code: 'INPUT_INVALID', ...trouble }));

export type OrRefusal<T> = Outcome<T, Refusal>;
