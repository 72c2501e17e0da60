import type { Assessment, Offer, SystemInput } from '@flangewise/model';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { ReleaseKind } from '../generated/enums.js';
import type { Desk } from '../trpc/context.js';
import { standing, waitsFor } from './blocking.js';
import { numberOf, unsentRevision } from './unsent-revision.js';
import { fileRows, writeRevision } from './write-revision.js';

export interface Release {
  readonly id: string;
  readonly what: ReleaseKind;
  readonly note: string;
}

/** Rendering happens within the transaction, so that nobody sends or revises meanwhile [ms]. */
const limit = { timeout: 120_000, maxWait: 10_000 };

/** An approver's word for a discount or a special; state, watermark and documents follow from it. */
export async function releaseOffer({ database, workshop, person }: Desk, { id, what, note }: Release) {
  return database.$transaction(async (step) => {
    const revision = await unsentRevision(step, person, id);
    const { blocking, releases, systemRevision } = revision;
    const given = releases.map((release) => ({ what: release.what, by: release.author.name }));
    const before = given.map((release) => release.what);
    if (!waitsFor(blocking, before).includes(what))
      throw refuse('NOTHING_TO_RELEASE', { what, number: numberOf(revision) });
    const inForce = workshop.catalogue.revision;
    if (systemRevision.catalogueRevision !== inForce)
      throw refuse('OFFER_OUTDATED', {
        number: numberOf(revision),
        given: systemRevision.catalogueRevision,
        current: inForce,
      });
    const released = [...given, { what, by: person.name }];
    const { document, state, files } = await writeRevision(workshop, {
      system: systemRevision.document as unknown as SystemInput,
      offer: revision.document as unknown as Offer,
      assessment: systemRevision.assessment as unknown as Assessment,
      blocking,
      released,
      author: revision.author.name,
    });
    await step.offerRelease.create({
      data: { offerRevisionId: revision.id, what, note, authorId: person.id },
    });
    await step.offerFile.deleteMany({ where: { offerRevisionId: revision.id } });
    await step.offerRevision.update({
      where: { id: revision.id },
      data: { document: storable(document), state, files: { create: fileRows(files) } },
    });
    const kinds = released.map((release) => release.what);
    return { blocking: [...standing(blocking, kinds)], waitsFor: [...waitsFor(blocking, kinds)] };
  }, limit);
}
