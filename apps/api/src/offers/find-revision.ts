import { visibleOfferRevisions, visibleOffers } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import type { Person } from '../trpc/context.js';

export interface RevisionQuestion {
  readonly id: string;
  /** The letter; without it the newest that the person may know of. */
  readonly revision?: string | undefined;
}

/** A revision of an offer that the person may know of. */
export async function findRevision(
  step: Prisma.TransactionClient,
  person: Person,
  { id, revision: letter }: RevisionQuestion,
) {
  const revision = await step.offerRevision.findFirst({
    where: {
      offer: { id, ...visibleOffers(person) },
      ...(letter === undefined ? {} : { letter }),
      ...visibleOfferRevisions(person),
    },
    orderBy: { number: 'desc' },
    include: {
      offer: { select: { id: true, number: true, systemId: true, system: { select: { inquiryId: true } } } },
      author: { select: { name: true } },
      systemRevision: true,
      releases: { include: { author: { select: { name: true } } }, orderBy: { createdAt: 'asc' } },
    },
  });
  if (revision !== null) return revision;
  const given = letter === undefined ? id : `${id} and revision ${letter}`;
  throw refuse('NOT_FOUND', { what: 'offer', field: 'id', given });
}

export type FoundRevision = Awaited<ReturnType<typeof findRevision>>;
