import type { SystemInput } from '@flangewise/model';
import { seesPrices } from '../auth/visible.js';
import type { Person } from '../trpc/context.js';

/** A system as the person may see it: the terms of its offer (discount, price list, releases) are the maker's. */
export function systemFor(document: SystemInput, person: Pick<Person, 'role'>): SystemInput {
  const { offer: _, ...rest } = document;
  return seesPrices(person) ? document : rest;
}

/**
 * A system as the person may hand it in. A customer sets neither the terms of its offer nor the limits of its engineering: those
 * that stand in it stay.
 */
export function systemBy(
  person: Pick<Person, 'role'>,
  given: SystemInput,
  stored: Partial<SystemInput> = {},
): SystemInput {
  if (seesPrices(person)) return given;
  const { offer: _, settings: __, ...rest } = given;
  const { offer, settings } = stored;
  return {
    ...rest,
    ...(offer === undefined ? {} : { offer }),
    ...(settings === undefined ? {} : { settings }),
  };
}
