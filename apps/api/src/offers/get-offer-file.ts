import { refuse } from '../errors/refusal.js';
import { printedNumber } from '../letters.js';
import type { Desk } from '../trpc/context.js';
import { findRevision, type RevisionQuestion } from './find-revision.js';
import { audienceOf } from './get-offer.js';

export interface OfferFile {
  /** Under which it is saved, for instance `2417-C-offer.pdf`. */
  readonly fileName: string;
  readonly mediaType: string;
  readonly content: Uint8Array;
}

/** A document of an offer in the copy that the person may have. */
export async function getOfferFile(
  { database, person }: Omit<Desk, 'workshop'>,
  { name, ...asked }: RevisionQuestion & { readonly name: string },
): Promise<OfferFile> {
  const revision = await findRevision(database, person, asked);
  const file = await database.offerFile.findFirst({
    where: { offerRevisionId: revision.id, name, audience: audienceOf(person) },
  });
  if (file === null)
    throw refuse('NOT_FOUND', { what: 'document of this offer', field: 'name', given: name });
  const fileName = `${printedNumber(revision.offer.number)}-${revision.letter}-${name}`;
  return { fileName, mediaType: file.mediaType, content: file.content };
}
