import type { Catalogue } from '@flangewise/model';
import { catalogueRevision } from './catalogue-revision.js';
import { items } from './items.js';
import { range } from './range.js';

/** The demo range without a single price; `@flangewise/catalogue/prices` holds it with its price lists. */
export const demoCatalogue: Catalogue = {
  revision: catalogueRevision,
  maker: range.maker,
  items: [...items],
  priceLists: [],
};
