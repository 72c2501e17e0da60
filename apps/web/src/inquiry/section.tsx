import type { ReactNode } from 'react';

export interface SectionProps {
  readonly title: string;
  readonly children: ReactNode;
  /** What is asked less often, folded away until wanted. */
  readonly more?: { readonly title: string; readonly open: boolean; readonly children: ReactNode };
}

/** A group of fields under a heavy rule. */
export function Section({ title, children, more }: SectionProps) {
  return (
    <section className="sec pb-6">
      <h2 className="mb-2">{title}</h2>
      <div className="grid gap-4">{children}</div>
      {more !== undefined && (
        <details className="group mt-3" open={more.open || undefined}>
          <summary className="btn-link cursor-pointer">{more.title}</summary>
          <div className="mt-2 grid gap-4">{more.children}</div>
        </details>
      )}
    </section>
  );
}

/** Fields side by side; as many as fit. */
export function Row({ children }: { readonly children: ReactNode }) {
  return <div className="grid grid-cols-1 gap-3 sm:grid-cols-2 md:grid-cols-3">{children}</div>;
}
