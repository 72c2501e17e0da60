import type { Offer, Position } from '@flangewise/model';
import { seesPrices } from '../auth/visible.js';
import type { Person } from '../trpc/context.js';

/** A position without what its item costs. */
export type PositionWithoutPrice = Omit<Position, 'unitPrice' | 'total'> & {
  readonly unitPrice: null;
  readonly total: null;
};

/** An offer as a person may see it: a customer sees its sums, and no price of an item. */
export type OfferFor = Omit<Offer, 'positions'> & {
  readonly positions: (Position | PositionWithoutPrice)[];
};

export const offerFor = (offer: Offer, person: Person): OfferFor =>
  seesPrices(person)
    ? offer
    : {
        ...offer,
        positions: offer.positions.map((position) => ({ ...position, unitPrice: null, total: null })),
      };
