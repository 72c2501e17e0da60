import type { Offer } from '@flangewise/model';
import { lockRow } from '../database/lock-row.js';
import { refuse } from '../errors/refusal.js';
import { OfferState } from '../generated/enums.js';
import { letterOf, printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { findRevision } from './find-revision.js';
import { prepareRevision, revisionData } from './prepare-revision.js';

export interface OfferChange {
  readonly id: string;
  /** What is not given stays as the revision before has it. */
  readonly discountPercent?: string | undefined;
  readonly taxPercent?: string | undefined;
  readonly date: string;
}

/**
 * A new letter of an offer, of the system as it is now and by the prices in force. What was sent stands until the new letter is
 * sent; a draft that was not is replaced at once. Releases are given anew.
 */
export async function reviseOffer(desk: Desk, { id, date, ...asked }: OfferChange) {
  const before = await findRevision(desk.database, desk.person, { id });
  const { systemId } = before.offer;
  const old = before.document as unknown as Offer;
  const number = printedNumber(before.offer.number);
  const revision = letterOf(before.number + 1);
  const ready = await prepareRevision(desk, systemId, {
    number,
    revision,
    date,
    discountPercent: asked.discountPercent ?? old.discountPercent,
    taxPercent: asked.taxPercent ?? old.taxPercent,
  });
  await desk.database.$transaction(async (step) => {
    await lockRow(step, 'Offer', id);
    const last = await findRevision(step, desk.person, { id });
    if (last.number !== before.number) throw refuse('OFFER_CHANGED_MEANWHILE', { number });
    await step.offerRevision.updateMany({
      where: { offerId: id, state: { in: [OfferState.draft, OfferState.in_review] } },
      data: { state: OfferState.replaced },
    });
    const data = await revisionData(step, desk, ready);
    await step.offer.update({
      where: { id },
      data: { revisions: { create: { number: before.number + 1, letter: revision, ...data } } },
    });
  });
  return { id, number, revision };
}
