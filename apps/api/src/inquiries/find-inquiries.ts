import { visibleInquiries, visibleOffers } from '../auth/visible.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';

/** All inquiries that the person may know of, the last changed first. */
export async function findInquiries({ database, person }: Desk) {
  const rows = await database.inquiry.findMany({
    where: visibleInquiries(person),
    orderBy: { updatedAt: 'desc' },
    select: {
      id: true,
      number: true,
      title: true,
      state: true,
      updatedAt: true,
      client: { select: { name: true } },
      systems: { select: { _count: { select: { offers: { where: visibleOffers(person) } } } } },
    },
  });
  return rows.map(({ id, number, title, state, updatedAt, client, systems }) => ({
    id,
    number: printedNumber(number),
    title,
    state,
    updatedAt: updatedAt.toISOString(),
    client: client?.name ?? null,
    systems: systems.length,
    offers: systems.reduce((sum, system) => sum + system._count.offers, 0),
  }));
}
