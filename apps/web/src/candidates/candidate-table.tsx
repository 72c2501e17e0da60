import type { Outputs } from '../api/client';
import type { Engine } from '../engine/use-engine';
import { marginText, weeksText } from '../figures/margin';
import { priceText } from '../figures/price';
import { CheckBar } from '../look/check-bar';
import { StatusMark } from '../look/status-mark';
import { Thumbnail } from './thumbnail';

type Candidate = Outputs['systems']['solve']['candidates'][number];

export interface CandidateTableProps {
  readonly candidates: readonly Candidate[];
  readonly engine: Engine | undefined;
  readonly inquiryId: string;
  readonly currency: string;
  readonly mayTake: boolean;
  readonly isBusy: boolean;
  readonly onTake: (candidate: Candidate) => void;
}

/** Ranked systems, each with what it is best at, its price, delivery and tightest check. */
export function CandidateTable({
  candidates,
  engine,
  inquiryId,
  currency,
  mayTake,
  isBusy,
  onTake,
}: CandidateTableProps) {
  const priced = candidates.some(({ price }) => price !== undefined);
  return (
    <table className="tab">
      <caption className="sr-only">Systems that fit</caption>
      <thead>
        <tr>
          <th className="w-6" />
          <th className="w-16 max-sm:hidden">
            <span className="sr-only">Section</span>
          </th>
          <th>System</th>
          <th className="max-lg:hidden">In one sentence</th>
          {priced && <th className="num">Price, lowest first</th>}
          <th className="num">Delivery</th>
          <th className="max-md:hidden">Load on the tightest check</th>
          <th className="max-sm:hidden">Least margin</th>
          <th>
            <span className="sr-only">Take</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {candidates.map((candidate) => (
          <tr key={candidate.name}>
            <td className="text-total font-semibold">{candidate.name}</td>
            <td className="max-sm:hidden">
              <Thumbnail
                engine={engine}
                id={`${inquiryId}-${candidate.name}-${candidate.title}`}
                document={candidate.system}
              />
            </td>
            <td>
              <span className="font-semibold">{candidate.title}</span>
              <span className="lab block">
                <StatusMark status={candidate.status} /> {candidate.status}
              </span>
              <span className="say-sm block lg:hidden">{candidate.reason}</span>
            </td>
            <td className="say max-lg:hidden">{candidate.reason}</td>
            {priced && (
              <td className="num font-medium">
                {candidate.price === undefined ? '–' : priceText(candidate.price, currency)}
              </td>
            )}
            <td className="num">{weeksText(candidate.deliveryWeeks)}</td>
            <td className="max-md:hidden">
              <CheckBar
                status={candidate.status === 'not decidable' ? 'met' : candidate.status}
                utilisation={candidate.leastMargin === null ? undefined : 1 - candidate.leastMargin.value}
              />
            </td>
            <td className="max-sm:hidden">
              {candidate.leastMargin === null ? '–' : marginText(candidate.leastMargin.value)}
              <span className="lab block">{candidate.leastMargin?.title ?? ''}</span>
            </td>
            <td className="num">
              {mayTake && (
                <button
                  type="button"
                  className="btn"
                  disabled={isBusy}
                  onClick={() => onTake(candidate)}
                  aria-label={`Take ${candidate.name}, ${candidate.title}`}
                >
                  Take
                </button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
