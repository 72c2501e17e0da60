import type { Catalogue, PriceList } from '@flangewise/model';
import eur from './data/price-list-2026-11-eur.json' with { type: 'json' };
import gbp from './data/price-list-2026-11-gbp.json' with { type: 'json' };
import { demoCatalogue } from './demo-catalogue.js';

/** Price lists of the demo range. Only this entry point reaches them: what a client sees is built without it. */
export const priceLists: readonly PriceList[] = [eur as PriceList, gbp as PriceList];

/** The demo range with its price lists. */
export const pricedDemoCatalogue: Catalogue = { ...demoCatalogue, priceLists: [...priceLists] };
