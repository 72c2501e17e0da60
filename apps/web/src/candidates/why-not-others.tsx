import type { Outputs } from '../api/client';

type Answer = Outputs['systems']['solve'];

/** Families that were left out, with the reason and what would let them in. */
export function WhyNotOthers({ refusals }: { readonly refusals: Answer['refusals'] }) {
  if (refusals.length === 0) return null;
  return (
    <section className="sec">
      <h2 className="font-semibold">Why not the others</h2>
      <ul>
        {refusals.map(({ what, items, reason, frees }) => (
          <li key={what} className="row grid grid-cols-[3rem_1fr] gap-2 py-2">
            <span className="text-total">{items}</span>
            <div>
              <h3 className="font-semibold">{what}</h3>
              <p className="say-sm">{reason}</p>
              {frees !== undefined && <p className="say-sm text-given">{frees}</p>}
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
