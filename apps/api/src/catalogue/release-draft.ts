import { createHash } from 'node:crypto';
import { refuse } from '../errors/refusal.js';
import { CatalogueAction, CatalogueState } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { changeDraft, takeDraft } from './change-draft.js';
import { hindrancesOf, surroundingsOf } from './check-draft.js';
import { loadCatalogue } from './load-catalogue.js';
import type { PackedCatalogue } from './packed-catalogue.js';

export interface CatalogueRelease {
  readonly id: string;
  /** The version that was seen. */
  readonly version: number;
  /** Why it is released. */
  readonly note: string;
}

/** As the range that comes with the product is named: the month and a digest of the content, which tells the draft too. */
const nameOf = ({ json }: PackedCatalogue, at: Date): string =>
  `${at.toISOString().slice(0, 7)}-${createHash('sha256').update(new Uint8Array(json)).digest('hex').slice(0, 8)}`;

/** Puts a draft into force, for good. Whoever asks from now on is answered by it; offers that were made keep theirs. */
export async function releaseDraft(
  desk: CatalogueDesk,
  { id, version, note }: CatalogueRelease,
): Promise<{ readonly id: string; readonly name: string; readonly releasedAt: string }> {
  const { database, workshops, person } = desk;
  const seen = { draftId: id, version };
  const over = await database.$transaction(async (step) => {
    await takeDraft(step, seen);
    return loadCatalogue(step, id);
  });
  const troubles = await workshops.runJob('check', { over, question: null });
  const releasedAt = new Date();
  const name = nameOf(over, releasedAt);
  await changeDraft(desk, seen, async (step, draft) => {
    const around = await surroundingsOf(step, draft);
    const hindrances = hindrancesOf({ ...around, troubles });
    if (hindrances.length > 0)
      throw refuse(
        'CATALOGUE_NOT_RELEASABLE',
        { name: draft.name, problems: hindrances.join(' ') },
        { details: { hindrances } },
      );
    return {
      action: CatalogueAction.released,
      data: {
        name,
        note,
        state: CatalogueState.released,
        releasedAt,
        releasedBy: { connect: { id: person.id } },
      },
    };
  });
  return { id, name, releasedAt: releasedAt.toISOString() };
}
