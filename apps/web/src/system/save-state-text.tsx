import { timeText } from '../figures/moment';
import type { SaveState } from './use-saving';

/** How saving stands: a time, or what is kept while it cannot be done. */
export function SaveStateText({ state }: { readonly state: SaveState }) {
  switch (state.kind) {
    case 'saved':
      return <span className="lab whitespace-nowrap">Saved {timeText(state.at)}</span>;
    case 'unsaved':
      return <span className="lab whitespace-nowrap">Not saved yet</span>;
    case 'saving':
      return <span className="lab whitespace-nowrap">Saving …</span>;
    case 'offline':
      return (
        <span className="chip chip-solid" title={`${String(state.changes)} kept on this computer`}>
          Offline since {timeText(state.since)}
        </span>
      );
    case 'other':
      return <span className="lab s-caution whitespace-nowrap">Changed by {state.theirs.by}</span>;
    case 'refused':
      return <span className="lab s-fail whitespace-nowrap">Not saved</span>;
  }
}

/** Said across the page while saving cannot be done. */
export function SaveTrouble({ state, onRetry }: { readonly state: SaveState; readonly onRetry: () => void }) {
  if (state.kind === 'offline')
    return (
      <p role="status" className="border-b border-rule bg-open-t px-4 py-1.5 lg:px-6">
        <span className="chip chip-solid mr-2">Offline since {timeText(state.since)}</span>
        {state.changes} {state.changes === 1 ? 'change is' : 'changes are'} kept on this computer and{' '}
        {state.changes === 1 ? 'goes' : 'go'} out when the line is back. Nothing is lost.
      </p>
    );
  if (state.kind === 'refused')
    return (
      <p role="alert" className="border-b border-fail bg-fail-t px-4 py-1.5 lg:px-6">
        Not saved: {state.message}{' '}
        <button type="button" className="btn btn-sm ml-2" onClick={onRetry}>
          Save again
        </button>
      </p>
    );
  return null;
}
