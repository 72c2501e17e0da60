import { type SlotPath, slotPath, frameSlots, setSlots, type SystemInput } from '@flangewise/model';
import { isApiError, reasonOf } from '../api/api-error';
import { choiceIn } from './edit-system';

/** What somebody else saved meanwhile. */
export interface Theirs {
  readonly by: string;
  readonly at: Date;
  readonly document: SystemInput;
  readonly version: number;
}

interface Told {
  readonly by?: unknown;
  readonly at?: unknown;
  readonly document?: unknown;
  readonly version?: unknown;
}

/** Somebody else's document out of the refusal to save; undefined for any other error. */
export const theirsOf = (error: unknown): Theirs | undefined => {
  if (!isApiError(error) || reasonOf(error) !== 'SYSTEM_CHANGED_BY_OTHER') return undefined;
  const { details } = error.data as unknown as { readonly details?: Told };
  const { by, at, document, version } = details ?? {};
  if (typeof version !== 'number' || typeof document !== 'object' || document === null) return undefined;
  return {
    by: typeof by === 'string' ? by : 'Somebody else',
    at: new Date(typeof at === 'string' ? at : Date.now()),
    document: document as SystemInput,
    version,
  };
};

/** Slots in which two documents differ. */
export const differingSlots = (mine: SystemInput, theirs: SystemInput): readonly SlotPath[] => {
  const sets = Math.max(mine.sets?.length ?? 0, theirs.sets?.length ?? 0);
  const paths = [
    ...Array.from({ length: sets }, (_, set) => setSlots.map((slot) => slotPath(slot, set))).flat(),
    ...frameSlots.map((slot) => slotPath(slot)),
  ];
  return paths.filter((path) => choiceIn(mine, path) !== choiceIn(theirs, path));
};
