'use client';

import type { OpenPoint } from '@flangewise/model';
import { fieldId } from './fields';
import { fieldNameOf } from './read-form';

/** The field of the form that answers a point; the nearest one where the point names a group. */
const fieldOf = (point: OpenPoint): HTMLElement | null => {
  const name = fieldNameOf(point.field.replace(/^sets\./, 'sets[0].'));
  return (
    document.getElementById(fieldId(name)) ?? document.querySelector<HTMLElement>(`[id^="${fieldId(name)}"]`)
  );
};

function goTo(point: OpenPoint): void {
  const field = fieldOf(point);
  field?.closest('details')?.setAttribute('open', '');
  field?.focus();
}

export interface OpenPointsProps {
  /** Undefined while they are not known. */
  readonly points: readonly OpenPoint[] | undefined;
  /** Why they are not known, and what to do. */
  readonly lacking?: string | undefined;
}

const countText = (points: readonly OpenPoint[]): string =>
  points.length === 0 ? 'nothing to ask' : `${String(points.length)} to ask`;

/** Questions to the client: unknowns are allowed, and listed. */
export function OpenPoints({ points, lacking }: OpenPointsProps) {
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>Still open</h2>
        <span className="lab">{points === undefined ? 'not known yet' : countText(points)}</span>
      </div>
      {lacking !== undefined && <p className="say-sm mt-1">{lacking}</p>}
      <ol className="grid">
        {points?.map((point) => (
          <li key={`${point.field} ${point.question}`} className="row py-2">
            <button type="button" className="btn-link font-medium" onClick={() => goTo(point)}>
              {point.question}
            </button>
            <p className="say-sm text-ink2 first-letter:uppercase">{point.why}</p>
          </li>
        ))}
      </ol>
    </section>
  );
}
