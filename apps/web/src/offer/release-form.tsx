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
      <div>
        <button type="submit" className="btn" disabled={isBusy || note.trim() === ''}>
          Release the {what}
        </button>
      </div>
    </form>
  );
}
