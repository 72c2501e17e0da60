import type { Offer } from '@flangewise/model';
import { visibleOfferRevisions, visibleOffers } from '../auth/visible.js';
import type { Prisma } from '../generated/client.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';

export interface OfferFilter {
  readonly inquiryId?: string | undefined;
}

/** Offers that the person may know of, each by its newest revision that he may know of, the newest first. */
export async function findOffers({ database, person }: Desk, { inquiryId }: OfferFilter) {
  const where: Prisma.OfferWhereInput[] = [
    visibleOffers(person),
    ...(inquiryId === undefined ? [] : [{ system: { inquiryId } }]),
  ];
  const rows = await database.offer.findMany({
    where: { AND: where },
    orderBy: { number: 'desc' },
    include: {
      system: { select: { inquiryId: true, letter: true } },
      revisions: {
        where: visibleOfferRevisions(person),
        orderBy: { number: 'desc' },
        take: 1,
        select: { letter: true, state: true, document: true, createdAt: true, sentAt: true },
      },
    },
  });
  return rows.flatMap(({ id, number, systemId, system, revisions: [newest] }) => {
    if (newest === undefined) return [];
    const { title, client, date, total, currency } = newest.document as unknown as Offer;
    return [
      {
        id,
        number: printedNumber(number),
        revision: newest.letter,
        state: newest.state,
        title,
        client: client ?? null,
        date: date ?? null,
        total,
        currency,
        systemId,
        system: system.letter,
        inquiryId: system.inquiryId,
        createdAt: newest.createdAt.toISOString(),
        sentAt: newest.sentAt?.toISOString() ?? null,
      },
    ];
  });
}
