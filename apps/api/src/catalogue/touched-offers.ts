import type { CatalogueDifference } from '@flangewise/catalogue/exchange';
import type { Offer } from '@flangewise/model';
import { openInquiries } from '../inquiries/open-inquiries.js';
import { OfferState, type Prisma } from '../generated/client.js';
import { printedNumber } from '../letters.js';

/** An open offer that says something else by another catalogue. */
export interface TouchedOffer {
  readonly id: string;
  readonly number: string;
  readonly letter: string;
  readonly state: OfferState;
  readonly client: string | null;
  /** Letter of its system within the inquiry. */
  readonly system: string;
  readonly systemId: string;
  /** Its items that are changed, withdrawn or priced otherwise; none where only its price list is gone. */
  readonly items: readonly string[];
}

type Difference = Pick<CatalogueDifference, 'changed' | 'removed' | 'prices' | 'priceLists'>;

/** What an offer has to do with a difference; undefined where nothing. */
function touched({ positions, priceList }: Offer, difference: Difference): readonly string[] | undefined {
  const { changed, removed, prices, priceLists } = difference;
  const ids = new Set([
    ...[...changed, ...removed].map(({ id }) => id),
    ...prices.filter((price) => price.priceList === priceList).map(({ id }) => id),
  ]);
  const items = [...new Set(positions.map(({ item }) => item).filter((item) => ids.has(item)))];
  const listIsGone = priceLists.some(({ id, kind }) => id === priceList && kind === 'removed');
  return items.length > 0 || listIsGone ? items : undefined;
}

/** The open offers that a difference of two catalogues touches, by their newest letter, the newest offer first. */
export async function findTouchedOffers(
  step: Prisma.TransactionClient,
  difference: Difference,
): Promise<readonly TouchedOffer[]> {
  const rows = await step.offer.findMany({
    where: { system: { inquiry: openInquiries } },
    orderBy: { number: 'desc' },
    include: {
      system: { select: { letter: true } },
      revisions: {
        where: { state: { not: OfferState.replaced } },
        orderBy: { number: 'desc' },
        take: 1,
        select: { letter: true, state: true, document: true },
      },
    },
  });
  return rows.flatMap(({ id, number, systemId, system, revisions: [newest] }) => {
    if (newest === undefined) return [];
    const offer = newest.document as unknown as Offer;
    const items = touched(offer, difference);
    if (items === undefined) return [];
    return [
      {
        id,
        number: printedNumber(number),
        letter: newest.letter,
        state: newest.state,
        client: offer.client ?? null,
        system: system.letter,
        systemId,
        items,
      },
    ];
  });
}
