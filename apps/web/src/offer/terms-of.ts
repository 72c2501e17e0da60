import type { OfferTerms, Percentages } from './offer-terms-form';

/** What the API is told: a field that was empty and stays so is left to it, one that was emptied is 0. */
export function termsOf(typed: OfferTerms, initial: Percentages) {
  const percentOf = (field: keyof Percentages): string | undefined => {
    const text = typed[field].trim().replace(',', '.');
    if (text !== '') return text;
    return initial[field] === undefined ? undefined : '0';
  };
  return {
    date: typed.date,
    discountPercent: percentOf('discountPercent'),
    taxPercent: percentOf('taxPercent'),
  };
}
