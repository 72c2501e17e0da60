import Link from 'next/link';
import { Note } from '../look/notice';
import { SaveStateText } from './save-state-text';
import type { SaveState } from './use-saving';

/** What a person may do with the system that is open. */
export interface Standing {
  /** Undefined for a candidate that nobody has saved yet. */
  readonly systemId: string | undefined;
  /** Why this person does not save; undefined for those who do. */
  readonly whyNot: string | undefined;
  readonly state: SaveState;
  /** Saves the candidate; undefined while that is under way. */
  readonly onKeep: (() => void) | undefined;
  /** The offer of the system, or where it is drafted; undefined where there is none to be seen. */
  readonly offer: { readonly href: string; readonly title: string } | undefined;
}

/** How saving stands, and what comes next. */
export function NextStep({ standing }: { readonly standing: Standing }) {
  const { systemId, whyNot, state, onKeep, offer } = standing;
  return (
    <>
      {whyNot === undefined && systemId !== undefined && (
        <span className="sm:max-lg:hidden">
          <SaveStateText state={state} />
        </span>
      )}
      {whyNot === undefined && systemId === undefined && (
        <button type="button" className="btn btn-ink" disabled={onKeep === undefined} onClick={onKeep}>
          Save it
        </button>
      )}
      {offer !== undefined && (
        <Link href={offer.href} className="btn btn-ink">
          {offer.title}
        </Link>
      )}
    </>
  );
}

/** Said across the page where changes are not saved by themselves. */
export function NotSavedHere({ systemId, whyNot }: Standing) {
  if (whyNot === undefined && systemId !== undefined) return null;
  return (
    <Note>
      {whyNot === undefined
        ? 'This candidate is not saved yet. Change what you like, then save it.'
        : `${whyNot} What you try here stays on this page.`}
    </Note>
  );
}
