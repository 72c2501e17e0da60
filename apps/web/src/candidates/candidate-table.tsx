import Link from 'next/link';
import { useMemo } from 'react';
import type { Outputs } from '../api/client';
import type { Engine } from '../engine/use-engine';
import { marginText, weeksText } from '../figures/margin';
import { priceText } from '../figures/price';
import { CheckBar } from '../look/check-bar';
import { StatusMark, statusClass } from '../look/status-mark';
import { partsApart } from './apart';
import { Thumbnail } from './thumbnail';

type Candidate = Outputs['systems']['solve']['candidates'][number];

export interface CandidateTableProps {
  readonly inquiryId: string;
  readonly candidates: readonly Candidate[];
  readonly engine: Engine | undefined;
  /** Takes candidates; others open them, to check them and to try changes. */
  readonly mayTake: boolean;
  readonly isBusy: boolean;
  readonly pointed: string | undefined;
  readonly onPoint: (name: string | undefined) => void;
  readonly onTake: (candidate: Candidate) => void;
}

/** The bar tells the tightest check that could be decided; the mark beside it the state of the whole. */
function Margin({ candidate }: { readonly candidate: Candidate }) {
  const { leastMargin, status } = candidate;
  return (
    <>
      <b className={`font-semibold ${status === 'met' ? '' : statusClass(status)}`}>
        {leastMargin === null ? 'open' : marginText(leastMargin.value)}
      </b>{' '}
      <StatusMark status={status} />
      <span className="lab block">{leastMargin?.title ?? ''}</span>
    </>
  );
}

function Row({
  inquiryId,
  candidate,
  apart,
  engine,
  mayTake,
  isBusy,
  pointed,
  onPoint,
  onTake,
}: Omit<CandidateTableProps, 'candidates'> & { readonly candidate: Candidate; readonly apart: string }) {
  const { name, title, reason, price, deliveryWeeks, leastMargin, system } = candidate;
  return (
    <tr
      className={name === pointed ? 'bg-given-t' : ''}
      onPointerEnter={() => onPoint(name)}
      onPointerLeave={() => onPoint(undefined)}
    >
      <td className="pl-1.5! text-[16px] font-[640]">{name}</td>
      <td className="max-sm:hidden">
        <Thumbnail engine={engine} document={system} />
      </td>
      <td>
        <b className="font-semibold">{title}</b>
        <span className="lab block first-letter:uppercase">{apart}</span>
        <span className="say-sm block text-ink2 lg:hidden">{reason}</span>
        <span className="mt-1 block sm:hidden">
          <b className="font-semibold">
            {price !== undefined && engine?.currency !== undefined
              ? `${priceText(price, engine.currency)}, `
              : ''}
            {weeksText(deliveryWeeks)}
          </b>
        </span>
        <span className="block sm:hidden">
          <Margin candidate={candidate} />
        </span>
      </td>
      <td className="say max-lg:hidden">{reason}</td>
      {price !== undefined && engine?.currency !== undefined && (
        <td className="num max-sm:hidden">
          <b className="font-semibold">{priceText(price, engine.currency)}</b>
        </td>
      )}
      <td className="num max-sm:hidden">
        <b className="font-semibold">{weeksText(deliveryWeeks)}</b>
      </td>
      <td className="pl-6! max-lg:hidden">
        <CheckBar
          status={candidate.status === 'not decidable' && leastMargin !== null ? 'met' : candidate.status}
          utilisation={leastMargin === null ? undefined : 1 - leastMargin.value}
          width={150}
        />
      </td>
      <td className="max-sm:hidden">
        <Margin candidate={candidate} />
      </td>
      <td className="num pr-1.5!">
        {mayTake ? (
          <button
            type="button"
            className="btn"
            disabled={isBusy}
            onClick={() => onTake(candidate)}
            aria-label={`Take ${name}, ${title}`}
          >
            Take
          </button>
        ) : (
          <Link
            href={`/inquiries/${inquiryId}/candidates/${name}`}
            className="btn"
            aria-label={`Open ${name}, ${title}`}
          >
            Open
          </Link>
        )}
      </td>
    </tr>
  );
}

/** Ranked systems, each with what it is best at, its price, delivery and tightest check. */
export function CandidateTable(props: CandidateTableProps) {
  const { candidates, engine, mayTake } = props;
  const priced = engine?.currency !== undefined && candidates.some(({ price }) => price !== undefined);
  const names = useMemo(() => new Map(engine?.items.map(({ id, name }) => [id, name])), [engine]);
  const apart = useMemo(() => partsApart(candidates, (id) => names.get(id) ?? ''), [candidates, names]);
  return (
    <table className="tab [&_td]:align-middle">
      <caption className="sr-only">Systems that fit, ranked</caption>
      <thead>
        <tr>
          <th className="w-7">
            <span className="sr-only">Letter</span>
          </th>
          <th className="w-16 max-sm:hidden">
            <span className="sr-only">Section</span>
          </th>
          <th>System</th>
          <th className="max-lg:hidden">In one sentence</th>
          {priced && <th className="num max-sm:hidden">Price, lowest first</th>}
          <th className="num max-sm:hidden">Delivery</th>
          <th className="pl-6! max-lg:hidden">Load on the tightest check</th>
          <th className="max-sm:hidden">Least margin</th>
          <th>
            <span className="sr-only">{mayTake ? 'Take' : 'Open'}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {candidates.map((candidate, at) => (
          <Row key={candidate.name} {...props} candidate={candidate} apart={apart[at] ?? ''} />
        ))}
      </tbody>
    </table>
  );
}
