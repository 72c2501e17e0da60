import type { OfferTerms } from './offer-terms-form';

const percentOf = (typed: string): string => typed.trim().replace(',', '.');

/** What the API is told; a field left empty is left to it. */
export const termsOf = ({ date, discountPercent, taxPercent }: OfferTerms) => ({
  date,
  ...(percentOf(discountPercent) === '' ? {} : { discountPercent: percentOf(discountPercent) }),
  ...(percentOf(taxPercent) === '' ? {} : { taxPercent: percentOf(taxPercent) }),
});
