import type { SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import { checkChoices } from '../systems/check-choices.js';
import { freezeSystem } from '../systems/freeze-system.js';
import type { Desk } from '../trpc/context.js';
import { readSystem } from '../workshop/read-system.js';
import type { Blocking } from './blocking.js';
import { composeOffer, type OfferTerms } from './compose-offer.js';
import { fileRows, writeRevision, type WrittenRevision } from './write-revision.js';

/** A revision that is composed and rendered, and only has to be saved. */
export interface ReadyRevision extends WrittenRevision {
  readonly blocking: Blocking;
  readonly systemId: string;
  /** The version of the system that it was made of. */
  readonly systemVersion: number;
}

/** Makes a revision of the system as it is now. Nothing is saved, so nothing is half saved while this takes its time. */
export async function prepareRevision(
  { database, workshop, person }: Desk,
  systemId: string,
  terms: Omit<OfferTerms, 'client'>,
): Promise<ReadyRevision> {
  const row = await database.system.findFirst({
    where: { id: systemId, ...visibleSystems(person) },
    include: { inquiry: { select: { client: { select: { name: true } } } } },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'system', field: 'systemId', given: systemId });
  const system = row.document as unknown as SystemInput;
  checkChoices(readSystem(system), workshop);
  const client = row.inquiry.client?.name;
  const composed = composeOffer({ workshop, system, terms: { ...terms, client } });
  const written = await writeRevision(workshop, { system, ...composed, released: [], author: person.name });
  return { ...written, blocking: composed.blocking, systemId, systemVersion: row.version };
}

/** The columns of a revision, with the system frozen as it was offered and all documents. */
export async function revisionData(
  step: Prisma.TransactionClient,
  { workshop, person }: Desk,
  ready: ReadyRevision,
) {
  const frozen = await freezeSystem(step, { workshop, person }, ready.systemId);
  const { version } = await step.system.findUniqueOrThrow({ where: { id: ready.systemId } });
  if (version !== ready.systemVersion)
    throw refuse('CHANGED_MEANWHILE', { what: 'system', given: ready.systemVersion, current: version });
  return {
    systemRevisionId: frozen.id,
    document: storable(ready.document),
    state: ready.state,
    blocking: storable(ready.blocking),
    priceList: ready.document.priceList,
    authorId: person.id,
    files: { create: fileRows(ready.files) },
  };
}
