import { pricedDemoCatalogue } from '@flangewise/catalogue/prices';
import type { Catalogue } from '@flangewise/model';

/** What the maker sells, and its price lists: one for each currency, the first where nobody asks for one. */
export interface Stock {
  readonly catalogue: Catalogue;
}

export const currentStock: Stock = { catalogue: pricedDemoCatalogue };
