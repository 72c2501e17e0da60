/** Why there is no bill or price. */
type QuotationTroubleCode =
  | 'QUOTE_UNKNOWN_ITEM'
  | 'QUOTE_WRONG_SLOT'
  | 'QUOTE_NOTHING_CHOSEN'
  | 'QUOTE_UNKNOWN_PRICE_LIST'
  | 'QUOTE_PRICE_LIST_ENDED'
  | 'QUOTE_NO_PRICE'
  | 'QUOTE_PRICE_NOT_WHOLE'
  | 'QUOTE_UNKNOWN_SERVICE'
  | 'QUOTE_DISCOUNT_TOO_HIGH';

export interface QuotationTrouble {
  readonly code: QuotationTroubleCode;
  /** What was given, what is allowed and what to do. */
  readonly message: string;
  /** Slot path or field of the system, where one caused it. */
  readonly path?: string;
}
