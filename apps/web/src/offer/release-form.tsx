'use client';

import { useId, useState } from 'react';

export type Release = 'discount' | 'special';

export interface ReleaseFormProps {
  readonly what: Release;
  readonly isBusy: boolean;
  readonly onRelease: (what: Release, note: string) => void;
}

/** An approver's word that a discount or a special may go out, with the reason. */
export function ReleaseForm({ what, isBusy, onRelease }: ReleaseFormProps) {
  const id = useId();
  const [note, setNote] = useState('');
  const lacksReason = note.trim() === '';
  return (
    <form
      className="grid gap-2 py-2"
      onSubmit={(event) => {
        event.preventDefault();
        onRelease(what, note);
      }}
    >
      <label htmlFor={id} className="lab">
        Why the {what} may go out
      </label>
      <textarea
        id={id}
        className="field"
        rows={2}
        value={note}
        onChange={(event) => setNote(event.target.value)}
      />
      <p className="flex flex-wrap items-center gap-x-3 gap-y-1">
        <button
          type="submit"
          className="btn"
          disabled={isBusy || lacksReason}
          aria-describedby={lacksReason ? `${id}-lacks` : undefined}
        >
          Release the {what}
        </button>
        {lacksReason && (
          <span id={`${id}-lacks`} className="lab">
            Give the reason first; it is kept with the offer.
          </span>
        )}
      </p>
    </form>
  );
}
