export interface TriedChangeProps {
  /** The change in words. */
  readonly text: string;
  readonly onKeep: () => void;
  readonly onTakeBack: () => void;
}

/** A change of what the client said, shown in the fields: kept with the client's word alone. */
export function TriedChange({ text, onKeep, onTakeBack }: TriedChangeProps) {
  return (
    <section aria-label="Tried change" className="mb-3 bg-given-t px-3 py-2">
      <p id="tried">
        Tried, not kept: <span className="font-medium">{text}</span>. It changes what the client said: keep it
        or take it back before anything is saved.
      </p>
      <p className="mt-2 flex flex-wrap gap-2">
        <button type="button" className="btn btn-sm" onClick={onKeep}>
          The client agrees: keep it
        </button>
        <button type="button" className="btn btn-sm" onClick={onTakeBack}>
          Take it back
        </button>
      </p>
    </section>
  );
}
