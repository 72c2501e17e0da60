import type { InputTrouble } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';
import type { CatalogueRevision, Prisma } from '../generated/client.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { findEmptySlots } from './find-empty-slots.js';
import { findMissedItems, type MissedItem } from './find-missed-items.js';
import { currentRevision, loadCatalogue } from './load-catalogue.js';

/** What hinders the release of a draft by what others did meanwhile. */
interface Surroundings {
  /** The catalogue in force, where the draft does not begin at it: releasing it would take back what came between. */
  readonly overtakenBy: string | null;
  readonly missedItems: readonly MissedItem[];
  /** Titles of slots for which it has nothing and of which every system needs an item. */
  readonly emptySlots: readonly string[];
}

export interface DraftCheck extends Surroundings {
  readonly version: number;
  /** What keeps it from being a catalogue. */
  readonly troubles: readonly InputTrouble[];
  /** Everything that hinders the release, each a sentence; none where it can be released. */
  readonly hindrances: readonly string[];
}

export type CheckedDraft = Pick<CatalogueRevision, 'id' | 'name' | 'basedOnId'>;

/** Quick: asked once more in the moment of the release. */
export async function surroundingsOf(
  step: Prisma.TransactionClient,
  { id, basedOnId }: CheckedDraft,
): Promise<Surroundings> {
  const current = await currentRevision(step);
  return {
    overtakenBy: basedOnId === current.id ? null : current.name,
    missedItems: await findMissedItems(step, { from: current.id, to: id }),
    emptySlots: await findEmptySlots(step, id),
  };
}

const usersOf = ({ usedBy }: MissedItem): string =>
  usedBy.map(({ system, inquiry }) => `system ${system} of inquiry ${inquiry}`).join(', ');

export const missedText = (missed: MissedItem): string =>
  `${missed.item} is gone and ${usersOf(missed)} use it. Put it back and set its life to discontinued.`;

/** Everything that hinders a release, each a sentence that says what to do. */
export const hindrancesOf = ({
  overtakenBy,
  missedItems,
  emptySlots,
  troubles,
}: Surroundings & Pick<DraftCheck, 'troubles'>): readonly string[] => [
  ...(overtakenBy === null
    ? []
    : [
        `Catalogue ${overtakenBy} came into force after the draft was opened. Export what was changed, discard the draft, and import it into a new one.`,
      ]),
  ...missedItems.map(missedText),
  ...(emptySlots.length === 0
    ? []
    : [`There is nothing for ${emptySlots.join(', ')}, and every system needs one of each. Add an item.`]),
  ...troubles.map(({ path, given, message }) => `${path}: ${given} given; ${message}.`),
];

/** Everything that hinders the release of a draft as it is now. */
export async function checkDraft(
  { database, workshops }: Omit<CatalogueDesk, 'person'>,
  id: string,
): Promise<DraftCheck> {
  const draft = await database.catalogueRevision.findUnique({
    where: { id },
    select: { id: true, name: true, basedOnId: true, version: true },
  });
  if (draft === null) throw refuse('NOT_FOUND', { what: 'catalogue draft', field: 'id', given: id });
  const over = await loadCatalogue(database, id);
  const troubles = await workshops.runJob('check', { over, question: null });
  const around = await surroundingsOf(database, draft);
  return { ...around, version: draft.version, troubles, hindrances: hindrancesOf({ ...around, troubles }) };
}
