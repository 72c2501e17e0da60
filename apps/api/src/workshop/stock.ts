import type { SpecialRates } from '@flangewise/catalogue';
import { pricedDemoCatalogue, specialRates } from '@flangewise/catalogue/prices';
import type { Catalogue } from '@flangewise/model';

/** The catalogue in force and the price list by which systems are ranked and offered. */
export interface Stock {
  readonly catalogue: Catalogue;
  readonly priceListId: string;
  /** What parts cost that stand in no list, in the currency of the list. */
  readonly specialRates: SpecialRates;
}

/** What the maker sells and by which list. */
export const currentStock: Stock = {
  catalogue: pricedDemoCatalogue,
  priceListId: '2026-11-EUR',
  specialRates,
};
