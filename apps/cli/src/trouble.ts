import type { CalculationErrorCode, InputTrouble, Outcome } from '@flangewise/model';
import type { QuotationTrouble } from '@flangewise/quotation';
import { type ExitCode, exitCodes } from './exit-code.js';

/** What can be wrong with a command; calculations and quotation bring their own codes. */
type CommandTroubleCode =
  /** The command line itself cannot be read. */
  | 'USAGE'
  /** There is no such file. */
  | 'INPUT_NOT_FOUND'
  /** The file cannot be read. */
  | 'INPUT_UNREADABLE'
  /** The file is larger than a document can be. */
  | 'INPUT_TOO_LARGE'
  /** The text is not JSON. */
  | 'INPUT_NOT_JSON'
  /** A field holds what is not allowed there. */
  | 'INPUT_INVALID'
  /** An item number that the range does not have. */
  | 'INPUT_UNKNOWN_ITEM'
  /** An item stands in a slot to which it does not belong. */
  | 'INPUT_WRONG_SLOT'
  /** An item that is no longer made. */
  | 'INPUT_ITEM_WITHDRAWN'
  /** A slot that may not be empty is said to be empty. */
  | 'INPUT_SLOT_EMPTY'
  /** Slots are not chosen yet. */
  | 'SYSTEM_INCOMPLETE'
  /** The folder holds files that are not those of an offer. */
  | 'OUTPUT_NOT_EMPTY'
  /** The folder cannot be written. */
  | 'OUTPUT_UNWRITABLE';

export type TroubleCode = CommandTroubleCode | CalculationErrorCode | QuotationTrouble['code'];

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
