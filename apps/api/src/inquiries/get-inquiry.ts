import type { InquiryInput } from '@flangewise/model';
import { visibleInquiries } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import { findOffers } from '../offers/find-offers.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { openPointsOf } from './open-points-of.js';
import { mayChange } from './take-up.js';

/** One inquiry with the systems and offers that answer it. */
export async function getInquiry(desk: Desk, id: string) {
  const { database, person, workshop } = desk;
  const row = await database.inquiry.findFirst({
    where: { id, ...visibleInquiries(person) },
    include: {
      owner: { select: { name: true } },
      systems: {
        orderBy: { createdAt: 'asc' },
        select: {
          id: true,
          letter: true,
          label: true,
          version: true,
          updatedAt: true,
          author: { select: { name: true } },
        },
      },
    },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'inquiry', field: 'id', given: id });
  const document = row.document as unknown as InquiryInput;
  return {
    id: row.id,
    number: printedNumber(row.number),
    title: row.title,
    state: row.state,
    clientId: row.clientId,
    owner: row.owner?.name ?? null,
    mayChange: mayChange(person, row),
    version: row.version,
    updatedAt: row.updatedAt.toISOString(),
    document,
    openPoints: openPointsOf(workshop, document),
    systems: row.systems.map(({ id: systemId, letter, label, version, updatedAt, author }) => ({
      id: systemId,
      name: letter,
      title: label,
      version,
      author: author.name,
      updatedAt: updatedAt.toISOString(),
    })),
    offers: await findOffers(desk, { inquiryId: row.id }),
  };
}
