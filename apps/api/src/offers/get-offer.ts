import type { Offer } from '@flangewise/model';
import { seesPrices, visibleOfferRevisions } from '../auth/visible.js';
import { Audience } from '../generated/enums.js';
import { printedNumber } from '../letters.js';
import type { Desk, Person } from '../trpc/context.js';
import { blockingSchema, standing, waitsFor } from './blocking.js';
import { findRevision, type RevisionQuestion } from './find-revision.js';
import { offerFor } from './offer-for.js';
import { stateText } from './write-revision.js';

/** Whose copy of a document a person gets. */
export const audienceOf = (person: Person): Audience =>
  seesPrices(person) ? Audience.maker : Audience.client;

/** How the maker came to send it is no matter of the client's. */
const nothingOfTheHouse = { blocking: [], waitsFor: [], releases: [] };

/** An offer as it is now, or one of its letters, with its history and its documents. */
export async function getOffer({ database, person }: Desk, asked: RevisionQuestion) {
  const revision = await findRevision(database, person, asked);
  const { offer, releases, systemRevision } = revision;
  const blocking = blockingSchema.parse(revision.blocking);
  const kinds = releases.map(({ what }) => what);
  const state = stateText(revision.state);
  const history = await database.offerRevision.findMany({
    where: { offerId: offer.id, ...visibleOfferRevisions(person) },
    orderBy: { number: 'desc' },
    include: {
      author: { select: { name: true } },
      systemRevision: { select: { number: true, catalogueRevision: true, ruleRevision: true } },
    },
  });
  const documents = await database.offerFile.findMany({
    where: { offerRevisionId: revision.id, audience: audienceOf(person) },
    orderBy: { name: 'asc' },
    select: { name: true, mediaType: true, bytes: true },
  });
  return {
    id: offer.id,
    number: printedNumber(offer.number),
    revision: revision.letter,
    state: revision.state,
    systemId: offer.systemId,
    inquiryId: offer.system.inquiryId,
    systemRevision: systemRevision.number,
    offer: offerFor({ ...(revision.document as unknown as Offer), state }, person),
    ...(seesPrices(person)
      ? {
          blocking: [...standing(blocking, kinds)],
          waitsFor: [...waitsFor(blocking, kinds)],
          releases: releases.map(({ what, note, author, createdAt }) => ({
            what,
            note,
            by: author.name,
            at: createdAt.toISOString(),
          })),
        }
      : nothingOfTheHouse),
    revisions: history.map((one) => ({
      revision: one.letter,
      state: one.state,
      author: one.author.name,
      createdAt: one.createdAt.toISOString(),
      sentAt: one.sentAt?.toISOString() ?? null,
      priceList: one.priceList,
      systemRevision: one.systemRevision.number,
      catalogueRevision: one.systemRevision.catalogueRevision,
      ruleRevision: one.systemRevision.ruleRevision,
    })),
    documents,
  };
}
