import Link from 'next/link';
import { OfferState } from '../offer/offer-state';
import type { Comparison } from './use-revision';

/** Items of an offer that are named; the rest are counted. */
const named = 4;

const itemsText = (items: readonly string[]): string =>
  items.length === 0
    ? 'its price list is gone'
    : `${items.slice(0, named).join(', ')}${items.length > named ? ` and ${String(items.length - named)} more` : ''}`;

/** Open offers that hold something that is changed, withdrawn or priced otherwise. */
export function TouchedOffers({ offers }: { readonly offers: Comparison['touchedOffers'] }) {
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>Open offers that this touches</h2>
        <span className="lab">{offers.length}</span>
      </div>
      {offers.length === 0 ? (
        <p className="text-ink2">None. Every open offer says the same by both.</p>
      ) : (
        <>
          <p className="say-sm mb-1">
            They keep what they say. Their next letter is made by the revision that is in force then.
          </p>
          <ul>
            {offers.map((offer) => (
              <li key={offer.id} className="row flex flex-wrap items-center gap-x-3 gap-y-1 py-1.5">
                <Link href={`/offers/${offer.id}`} className="font-medium">
                  Offer {offer.number}
                </Link>
                <OfferState revision={offer.letter} state={offer.state} />
                <span>{offer.client ?? 'no client named'}</span>
                <span className="lab">
                  system {offer.system}: {itemsText(offer.items)}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
