import { fail, type Outcome, succeed } from '@flangewise/model';
import ladder from './discount-ladder.json' with { type: 'json' };
import { Money } from './money.js';
import type { QuotationTrouble } from './trouble.js';

export interface Discount {
  readonly percent: Money;
  /** Whether an approver has to release it. */
  readonly needsRelease: boolean;
}

const steps = ladder.steps.map(({ upToPercent, releasedBy }) => ({
  upTo: new Money(upToPercent),
  releasedBy,
}));

/** Highest discount that an engineer gives alone, in percent. */
export const freeDiscountPercent: string = steps[0]?.upTo.toString() ?? '0';

/**
 * Places a discount on the ladder of the maker.
 *
 * @param percentText percent of the list total, up to two decimals; the offer's schema checks the form
 * @error QUOTE_DISCOUNT_TOO_HIGH above the last step
 */
export const readDiscount = (percentText: string): Outcome<Discount, QuotationTrouble> => {
  const percent = new Money(percentText);
  const step = steps.find(({ upTo }) => percent.lte(upTo));
  return step === undefined
    ? fail({
        code: 'QUOTE_DISCOUNT_TOO_HIGH',
        message: `offer.discountPercent: ${percentText} % given; at most ${steps.at(-1)?.upTo.toString() ?? '0'} % of the list total can be released`,
        path: 'offer.discountPercent',
      })
    : succeed({ percent, needsRelease: step.releasedBy !== 'engineer' });
};
