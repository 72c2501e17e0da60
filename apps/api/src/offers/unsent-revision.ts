import { refuse } from '../errors/refusal.js';
import { OfferState, type Prisma } from '../generated/client.js';
import { printedNumber } from '../letters.js';
import type { Person } from '../trpc/context.js';
import { blockingSchema } from './blocking.js';
import { findRevision, type FoundRevision } from './find-revision.js';

/** The number of an offer with its letter, as people say it. */
export const numberOf = ({ offer, letter }: Pick<FoundRevision, 'offer' | 'letter'>): string =>
  `${printedNumber(offer.number)}-${letter}`;

/** The newest revision, which nobody has sent yet. To change it, lock the offer first. */
export async function unsentRevision(step: Prisma.TransactionClient, person: Person, id: string) {
  const revision = await findRevision(step, person, { id });
  if (revision.state === OfferState.sent || revision.state === OfferState.replaced)
    throw refuse('OFFER_ALREADY_SENT', { number: numberOf(revision) });
  return { ...revision, blocking: blockingSchema.parse(revision.blocking) };
}

export type UnsentRevision = Awaited<ReturnType<typeof unsentRevision>>;
