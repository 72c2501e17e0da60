import { formatNumber } from '@flangewise/quantities';
import type { Outputs } from '../api/client';
import { ChartMark } from '../look/status-mark';
import { scaleOver } from './chart-scale';

type Candidate = Outputs['systems']['solve']['candidates'][number];

const size = { width: 880, height: 340, top: 34, bottom: 40, names: 210, side: 46 } as const;

const priceOf = (candidate: Candidate): number => Number(candidate.price ?? 0) / 1000;
const marginOf = (candidate: Candidate): number | undefined =>
  candidate.leastMargin === null ? undefined : candidate.leastMargin.value * 100;

/** Names keep this distance, in order of price. */
const lineHeight = 17;

const spread = (wanted: readonly number[]): readonly number[] => {
  const order = wanted.map((y, index) => ({ y, index })).sort((a, b) => a.y - b.y);
  const placed = new Array<number>(wanted.length).fill(0);
  let last = Number.NEGATIVE_INFINITY;
  for (const { y, index } of order) {
    last = Math.max(y, last + lineHeight);
    placed[index] = last;
  }
  const over = last - (size.height - size.bottom);
  return over > 0 ? placed.map((y) => y - over) : placed;
};

/** One scale of price; delivery to the left, least margin to the right, the names between. */
export function PairedChart({ candidates }: { readonly candidates: readonly Candidate[] }) {
  const panel = (size.width - size.names - 2 * size.side) / 2;
  const left = { from: size.side, to: size.side + panel };
  const right = { from: left.to + size.names, to: left.to + size.names + panel };
  const price = scaleOver(candidates.map(priceOf), 5);
  const weeks = scaleOver(
    candidates.map((c) => c.deliveryWeeks),
    4,
  );
  const margins = candidates.flatMap((c) => marginOf(c) ?? []);
  const margin = scaleOver([0, ...margins], 4);
  const y = (value: number): number =>
    size.height - size.bottom - price.at(value) * (size.height - size.top - size.bottom);
  const xWeeks = (value: number): number => left.to - weeks.at(value) * panel;
  const xMargin = (value: number): number => right.from + margin.at(value) * panel;
  const lines = spread(candidates.map((c) => y(priceOf(c))));
  const bottom = size.height - size.bottom;
  return (
    <svg
      viewBox={`0 0 ${String(size.width)} ${String(size.height)}`}
      className="w-full"
      role="img"
      aria-label="Price against delivery and least margin; the table below has the same figures"
    >
      <g className="text-[11px]" fill="var(--ink2)">
        <text x={left.from} y={12} fill="var(--ink)" fontWeight="600">
          Price and delivery
        </text>
        <text x={left.from} y={25}>
          thousand, weeks
        </text>
        <text x={right.from} y={12} fill="var(--ink)" fontWeight="600">
          Price and least margin
        </text>
        <text x={right.from} y={25}>
          thousand, % of the limit left
        </text>
        {price.ticks.map((tick) => (
          <g key={tick}>
            <path
              d={`M${String(left.from)} ${String(y(tick))}H${String(left.to)}M${String(right.from)} ${String(y(tick))}H${String(right.to)}`}
              stroke="var(--hair)"
            />
            <text x={left.from - 8} y={y(tick) + 4} textAnchor="end">
              {formatNumber(tick)}
            </text>
          </g>
        ))}
        {weeks.ticks.map((tick) => (
          <text key={tick} x={xWeeks(tick)} y={bottom + 16} textAnchor="middle">
            {formatNumber(tick)}
          </text>
        ))}
        <text x={left.to} y={bottom + 32} textAnchor="end">
          sooner →
        </text>
        {margin.ticks.map((tick) => (
          <text key={tick} x={xMargin(tick)} y={bottom + 16} textAnchor="middle">
            {formatNumber(tick)}
          </text>
        ))}
        <text x={right.to} y={bottom + 32} textAnchor="end">
          safer →
        </text>
      </g>
      <path
        d={`M${String(left.from)} ${String(bottom)}H${String(left.to)}M${String(right.from)} ${String(bottom)}H${String(right.to)}`}
        stroke="var(--rule)"
      />
      <path
        d={`M${String(xMargin(0))} ${String(size.top)}V${String(bottom)}`}
        stroke="var(--ink)"
        strokeWidth="1.6"
      />
      {candidates.map((candidate, index) => {
        const at = y(priceOf(candidate));
        const line = lines[index] ?? at;
        const share = marginOf(candidate);
        const weeksAt = xWeeks(candidate.deliveryWeeks);
        return (
          <g key={candidate.name}>
            <path
              d={`M${String(weeksAt)} ${String(at)}H${String(left.to)}L${String(left.to + 12)} ${String(line)}${share === undefined ? '' : `M${String(right.from - 12)} ${String(line)}L${String(right.from)} ${String(at)}H${String(xMargin(share))}`}`}
              stroke="var(--rule)"
              fill="none"
            />
            <text x={left.to + 16} y={line + 4} className="text-[12px]" fill="var(--ink)">
              <tspan fontWeight="600">{candidate.name} </tspan>
              {candidate.title.length > 30 ? `${candidate.title.slice(0, 29)}…` : candidate.title}
            </text>
            <ChartMark status={candidate.status} x={weeksAt} y={at} />
            {share !== undefined && <ChartMark status={candidate.status} x={xMargin(share)} y={at} />}
          </g>
        );
      })}
    </svg>
  );
}
