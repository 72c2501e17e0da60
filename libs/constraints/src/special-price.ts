import type { SpecialRates } from '@flangewise/model';

/** Whole list price of a special by the maker's rates: blank, machining, engineering; none without a rate. */
export const specialPriceOf = (
  material: string,
  mass: { readonly massKg: number; readonly blankMassKg: number },
  rates: SpecialRates | undefined,
): { readonly price?: number } => {
  const rate = rates?.materials.find((r) => r.material === material);
  if (rates === undefined || rate === undefined) return {};
  return {
    price: Math.ceil(
      mass.blankMassKg * rate.pricePerKg + mass.massKg * rate.machiningPerKg + rates.engineering,
    ),
  };
};
