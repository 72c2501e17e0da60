import type { RevisionHead } from './use-revision';

/** How a revision stands, in a word. */
export const standingOf = ({ state, isCurrent }: Pick<RevisionHead, 'state' | 'isCurrent'>): string =>
  state === 'released' ? (isCurrent ? 'in force' : 'was in force') : state;

const lookOf = ({ state, isCurrent }: Pick<RevisionHead, 'state' | 'isCurrent'>): string => {
  if (state === 'discarded') return 'chip chip-struck';
  return isCurrent ? 'chip chip-solid' : 'chip';
};

/** How a revision stands: a draft outlined, the one in force solid, a discarded one struck. */
export function RevisionChip({ revision }: { readonly revision: RevisionHead }) {
  return (
    <span className={lookOf(revision)}>
      <b className="font-semibold">{revision.number}</b> {standingOf(revision)}
    </span>
  );
}
