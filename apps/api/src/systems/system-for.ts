import type { SystemInput } from '@flangewise/model';
import { seesPrices } from '../auth/visible.js';
import type { Person } from '../trpc/context.js';

/** The terms of an offer (discount, price list, releases) are the maker's: a customer neither sees nor sets them. */
function withoutOfferTerms({ offer: _, ...rest }: SystemInput): SystemInput {
  return rest;
}

/** A system as the person may see it, or hand it in. */
export const systemFor = (document: SystemInput, person: Pick<Person, 'role'>): SystemInput =>
  seesPrices(person) ? document : withoutOfferTerms(document);
