import type { Outputs } from '../api/client';

type Answer = Outputs['systems']['solve'];

export interface WhyNotOthersProps {
  readonly refusals: Answer['refusals'];
  /** Whether anything fits at all. */
  readonly someFit: boolean;
}

/** Families that were left out, how many vessels each has, the reason and what would let them in. */
export function WhyNotOthers({ refusals, someFit }: WhyNotOthersProps) {
  if (refusals.length === 0) return null;
  const vessels = refusals.reduce((sum, { items }) => sum + items, 0);
  return (
    <section className="sec">
      <h2>
        {someFit ? `Why not ${String(vessels)} other vessels` : `Why none of ${String(vessels)} vessels`}
      </h2>
      <ul>
        {refusals.map(({ what, items, reason, frees }) => (
          <li key={what} className="row grid grid-cols-[3rem_1fr] gap-2 py-2">
            <span className="text-total">{items}</span>
            <div>
              <h3>{what}</h3>
              <p className="say-sm">{reason}</p>
              {frees !== undefined && <p className="say-sm text-given">{frees}</p>}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
