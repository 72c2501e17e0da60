import type { Offer } from '@flangewise/model';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import { InquiryState, OfferState } from '../generated/enums.js';
import type { Prisma } from '../generated/client.js';
import type { Desk } from '../trpc/context.js';
import { standing } from './blocking.js';
import { requireInForce } from './in-force.js';
import { numberOf, type UnsentRevision, unsentRevision } from './unsent-revision.js';
import { stateText } from './write-revision.js';

/** The client of the inquiry reads what is sent: refuses what is addressed to another. Until the transaction ends it stays his. */
async function requireItsClient(step: Prisma.TransactionClient, revision: UnsentRevision): Promise<void> {
  const { inquiryId } = revision.offer.system;
  await lockRow(step, 'Inquiry', inquiryId);
  const { client } = await step.inquiry.findUniqueOrThrow({
    where: { id: inquiryId },
    select: { client: { select: { name: true } } },
  });
  const { client: given = 'nobody' } = revision.document as unknown as Offer;
  if (client !== null && client.name !== given)
    throw refuse('OFFER_FOR_ANOTHER_CLIENT', { number: numberOf(revision), given, client: client.name });
}

/** Sends the newest revision: from now on the client sees it and nothing of it changes. The one sent before is replaced. */
export async function sendOffer({ database, workshop, person }: Desk, id: string) {
  return database.$transaction(async (step) => {
    await lockRow(step, 'Offer', id);
    const revision = await unsentRevision(step, person, id);
    const left = standing(
      revision.blocking,
      revision.releases.map(({ what }) => what),
    );
    const number = numberOf(revision);
    if (left.length > 0)
      throw refuse('OFFER_BLOCKED', { number, problems: left.join(' ') }, { details: { blocking: left } });
    await requireInForce(step, workshop, revision);
    await requireItsClient(step, revision);
    await step.offerRevision.updateMany({
      where: { offerId: id, state: OfferState.sent },
      data: { state: OfferState.replaced },
    });
    const sentAt = new Date();
    const document: Offer = { ...(revision.document as unknown as Offer), state: stateText(OfferState.sent) };
    await step.offerRevision.update({
      where: { id: revision.id },
      data: { state: OfferState.sent, sentAt, document: storable(document) },
    });
    await step.inquiry.updateMany({
      where: { id: revision.offer.system.inquiryId, state: InquiryState.open },
      data: { state: InquiryState.offered },
    });
    return { number, revision: revision.letter, sentAt: sentAt.toISOString() };
  });
}
