import type { Assessment, Offer, SystemInput } from '@flangewise/model';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { ReleaseKind } from '../generated/enums.js';
import type { Desk } from '../trpc/context.js';
import { standing, waitsFor } from './blocking.js';
import { requireInForce } from './in-force.js';
import { numberOf, type UnsentRevision, unsentRevision } from './unsent-revision.js';
import { fileRows, writeRevision } from './write-revision.js';

export interface Release {
  readonly id: string;
  readonly what: ReleaseKind;
  readonly note: string;
}

const givenReleases = ({ releases }: UnsentRevision) =>
  releases.map(({ what, author }) => ({ what, by: author.name }));

/** The revision under one more release. Nothing is saved, so nothing is half saved while this takes its time. */
async function writeReleased(
  { database, workshop, person }: Desk,
  revision: UnsentRevision,
  what: ReleaseKind,
) {
  const { blocking, systemRevision, document, author } = revision;
  const given = givenReleases(revision);
  const number = numberOf(revision);
  const kinds = given.map((release) => release.what);
  if (!waitsFor(blocking, kinds).includes(what)) throw refuse('NOTHING_TO_RELEASE', { what, number });
  await requireInForce(database, workshop, revision);
  return writeRevision(workshop, {
    system: systemRevision.document as unknown as SystemInput,
    offer: document as unknown as Offer,
    assessment: systemRevision.assessment as unknown as Assessment,
    blocking,
    released: [...given, { what, by: person.name }],
    author: author.name,
  });
}

/** An approver's word for a discount or a special; state, watermark and documents follow from it. */
export async function releaseOffer(desk: Desk, { id, what, note }: Release) {
  const { database, person } = desk;
  const before = await unsentRevision(database, person, id);
  const { document, state, files } = await writeReleased(desk, before, what);
  await database.$transaction(async (step) => {
    await lockRow(step, 'Offer', id);
    const now = await unsentRevision(step, person, id);
    if (now.id !== before.id || now.releases.length !== before.releases.length)
      throw refuse('OFFER_CHANGED_MEANWHILE', { number: numberOf(before) });
    await step.offerRelease.create({ data: { offerRevisionId: now.id, what, note, authorId: person.id } });
    await step.offerFile.deleteMany({ where: { offerRevisionId: now.id } });
    await step.offerRevision.update({
      where: { id: now.id },
      data: { document: storable(document), state, files: { create: fileRows(files) } },
    });
  });
  const kinds = [...givenReleases(before).map((release) => release.what), what];
  return { blocking: [...standing(before.blocking, kinds)], waitsFor: [...waitsFor(before.blocking, kinds)] };
}
