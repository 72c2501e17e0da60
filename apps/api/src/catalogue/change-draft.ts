import type { InputTrouble } from '@flangewise/model';
import { lockRow } from '../database/lock-row.js';
import { storable } from '../database/storable.js';
import { refuse } from '../errors/refusal.js';
import { type CatalogueAction, CatalogueState, type Prisma } from '../generated/client.js';
import type { CatalogueDesk } from '../trpc/context.js';

/** A draft as somebody saw it. */
export interface SeenDraft {
  readonly draftId: string;
  /** The version that was seen when the change began. */
  readonly version: number;
}

type Step = Prisma.TransactionClient;

/** An open draft in the version that was seen; until the transaction ends nobody else changes it. */
export async function takeDraft(step: Step, { draftId: id, version: given }: SeenDraft) {
  await lockRow(step, 'CatalogueRevision', id);
  const row = await step.catalogueRevision.findUnique({ where: { id } });
  if (row === null) throw refuse('NOT_FOUND', { what: 'catalogue draft', field: 'id', given: id });
  const { name, state, version } = row;
  if (state !== CatalogueState.draft) throw refuse('CATALOGUE_NO_DRAFT', { name, state });
  if (version !== given) throw refuse('CHANGED_MEANWHILE', { what: 'draft', given, current: version });
  return row;
}

export type TakenDraft = Awaited<ReturnType<typeof takeDraft>>;

export interface ChangedDraft {
  readonly version: number;
  /** What now hinders a release that did not before. */
  readonly troubles: readonly InputTrouble[];
}

/** What was done to a draft: what is kept of it, and columns of the draft that it changes. */
export interface Done {
  readonly action: CatalogueAction;
  readonly subject?: string;
  readonly before?: object;
  readonly after?: object;
  readonly data?: Prisma.CatalogueRevisionUpdateInput;
}

/**
 * Changes an open draft in the version that was seen, whole or not at all, and keeps who did it.
 *
 * @param change does it within the transaction; undefined where it leaves everything as it was
 * @returns the version that the draft has now
 */
export async function changeDraft(
  { database, person }: Pick<CatalogueDesk, 'database' | 'person'>,
  seen: SeenDraft,
  change: (step: Step, draft: TakenDraft) => Promise<Done | undefined>,
): Promise<number> {
  return database.$transaction(async (step) => {
    const draft = await takeDraft(step, seen);
    const done = await change(step, draft);
    if (done === undefined) return draft.version;
    const { action, subject = null, before, after, data } = done;
    const version = draft.version + 1;
    await step.catalogueChange.create({
      data: {
        revisionId: draft.id,
        version,
        action,
        subject,
        ...(before === undefined ? {} : { before: storable(before) }),
        ...(after === undefined ? {} : { after: storable(after) }),
        authorId: person.id,
      },
    });
    await step.catalogueRevision.update({ where: { id: draft.id }, data: { ...data, version } });
    return version;
  });
}
