import type { ReactNode } from 'react';
import { StatusMark } from './status-mark';

/** Something failed: what, and what can be done. */
export function Fault({
  text,
  action,
}: {
  readonly text: string;
  readonly action?: { readonly title: string; readonly run: () => void } | undefined;
}) {
  return (
    <div role="alert" className="grid justify-items-start gap-2">
      <p>
        <StatusMark status="not decidable" label="fault" /> {text}
      </p>
      {action !== undefined && (
        <button type="button" className="btn btn-sm" onClick={action.run}>
          {action.title}
        </button>
      )}
    </div>
  );
}

/** Nothing there yet: an invitation. */
export function Empty({ text, children }: { readonly text: string; readonly children?: ReactNode }) {
  return (
    <div className="grid justify-items-start gap-2 py-2">
      <p className="say max-w-[46ch]">{text}</p>
      {children}
    </div>
  );
}

/** Said across the page, below its head. */
export function Note({ children }: { readonly children: ReactNode }) {
  return (
    <section aria-label="Note" className="border-b border-rule bg-open-t px-4 py-1.5 lg:px-6">
      <p role="note">{children}</p>
    </section>
  );
}

/** A sentence about a field that was refused. */
export function Refused({ id, text }: { readonly id: string; readonly text: string }) {
  return (
    <p id={id} className="mt-1">
      <StatusMark status="not met" label="refused" /> {text}
    </p>
  );
}
