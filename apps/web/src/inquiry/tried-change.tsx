export interface TriedChangeProps {
  /** The change in words. */
  readonly text: string;
  /** Whether who reads it is the client. */
  readonly own: boolean;
  readonly onKeep: () => void;
  readonly onTakeBack: () => void;
}

/** A change of what the client said, shown in the fields: kept with the client's word alone. */
export function TriedChange({ text, own, onKeep, onTakeBack }: TriedChangeProps) {
  return (
    <section aria-label="Tried change" className="mb-3 bg-given-t px-3 py-2">
      <p id="tried">
        Tried, not kept: <span className="font-medium">{text}</span>. It changes what{' '}
        {own ? 'you' : 'the client'} said: keep it or take it back before anything is saved.
      </p>
      <p className="mt-2 flex flex-wrap gap-2">
        <button type="button" className="btn btn-sm" onClick={onKeep}>
          {own ? 'Keep it' : 'The client agrees: keep it'}
        </button>
        <button type="button" className="btn btn-sm" onClick={onTakeBack}>
          Take it back
        </button>
      </p>
    </section>
  );
}
