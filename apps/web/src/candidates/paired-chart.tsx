import { currencySign } from '../figures/price';
import { formatNumber } from '@flangewise/quantities';
import type { Outputs } from '../api/client';
import { ChartMark } from '../look/status-mark';
import { type Scale, scaleOver } from './chart-scale';
import { frontOf } from './front';
import { shortTitles } from './short-titles';

type Candidate = Outputs['systems']['solve']['candidates'][number];

const size = { width: 888, height: 436, top: 46, bottom: 44, names: 228, side: 52, right: 16 } as const;
const bottom = size.height - size.bottom;
const panel = (size.width - size.names - size.side - size.right) / 2;
const left = { from: size.side, to: size.side + panel };
const right = { from: left.to + size.names, to: left.to + size.names + panel };

/** Below this share of the limit a margin calls for care [%]. */
const careBelow = 5;
/** Names keep this distance, in order of price. */
const lineHeight = 18;
/** Letters of a name that have room beside the price. */
const longestName = 28;

const priceOf = (candidate: Candidate): number => Number(candidate.price ?? 0) / 1000;
const marginOf = (candidate: Candidate): number | undefined =>
  candidate.leastMargin === null ? undefined : candidate.leastMargin.value * 100;

const spread = (wanted: readonly number[]): readonly number[] => {
  const order = wanted.map((y, index) => ({ y, index })).toSorted((a, b) => a.y - b.y);
  const placed = new Array<number>(wanted.length).fill(0);
  let last = Number.NEGATIVE_INFINITY;
  for (const { y, index } of order) {
    last = Math.max(y, last + lineHeight);
    placed[index] = last;
  }
  const over = last - bottom;
  return over > 0 ? placed.map((y) => y - over) : placed;
};

const shortened = (title: string): string =>
  title.length <= longestName ? title : `${title.slice(0, longestName - 1).replace(/[\s,]+\S*$/, '')} …`;

/** Steps through points that nothing beats: level until the price of the next, then over to it. */
const stairs = (points: readonly { readonly x: number; readonly y: number }[]): string =>
  points
    .map(({ x, y }, i) => (i === 0 ? `M${String(x)} ${String(y)}` : `V${String(y)}H${String(x)}`))
    .join('');

interface Scales {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

interface PanelProps {
  readonly from: number;
  readonly to: number;
  readonly title: string;
  readonly unit: string;
  readonly good: string;
  readonly scale: Scale;
  readonly scales: Scales;
}

/** Frame, grid and titles of one panel. */
function Panel({ from, to, title, unit, good, scale, scales }: PanelProps) {
  return (
    <g>
      <text x={from} y={14} className="text-[13px] font-semibold" fill="var(--ink)">
        {title}
      </text>
      <g className="text-[11px]" fill="var(--ink2)">
        <text x={from} y={31}>
          {unit}
        </text>
        {scale.ticks.map((tick) => (
          <g key={tick}>
            <path
              d={`M${String(scales.x(tick))} ${String(size.top)}V${String(bottom)}`}
              stroke="var(--hair)"
            />
            <text x={scales.x(tick)} y={bottom + 16} textAnchor="middle">
              {formatNumber(tick)}
            </text>
          </g>
        ))}
        <text x={to} y={bottom + 34} textAnchor="end">
          {good} →
        </text>
      </g>
      <path
        d={`M${String(from)} ${String(size.top)}V${String(bottom)}H${String(to)}`}
        stroke="var(--ink)"
        fill="none"
      />
    </g>
  );
}

interface LineProps {
  readonly candidate: Candidate;
  readonly title: string;
  readonly line: number;
  readonly weeks: Scales;
  readonly margin: Scales;
  readonly isPointed: boolean;
  readonly onPoint: (name: string | undefined) => void;
}

/** One candidate through both panels, its name and price between. */
function CandidateLine({ candidate, title, line, weeks, margin, isPointed, onPoint }: LineProps) {
  const at = weeks.y(priceOf(candidate));
  const share = marginOf(candidate);
  const weeksAt = weeks.x(candidate.deliveryWeeks);
  const toMargin =
    share === undefined ? '' : `L${String(right.from)} ${String(at)}H${String(margin.x(share))}`;
  const colour = isPointed ? 'var(--given)' : 'var(--ink)';
  return (
    <g onPointerEnter={() => onPoint(candidate.name)} onPointerLeave={() => onPoint(undefined)}>
      <path
        d={`M${String(weeksAt)} ${String(at)}H${String(left.to)}L${String(left.to + 14)} ${String(line + 4)}H${String(right.from - 14)}${toMargin}`}
        stroke={isPointed ? 'var(--given)' : 'var(--rule)'}
        strokeWidth={isPointed ? 2.2 : 0.9}
        fill="none"
      />
      <text x={left.to + 20} y={line} className="text-[12px]" fill={colour}>
        <tspan fontWeight="640">{candidate.name}</tspan> {shortened(title)}
      </text>
      <text x={right.from - 16} y={line} className="text-[12px]" textAnchor="end" fill={colour}>
        {formatNumber(priceOf(candidate))}
      </text>
      <ChartMark status={candidate.status} x={weeksAt} y={at} />
      {share !== undefined && <ChartMark status={candidate.status} x={margin.x(share)} y={at} />}
    </g>
  );
}

export interface PairedChartProps {
  readonly candidates: readonly Candidate[];
  readonly currency: string;
  readonly pointed: string | undefined;
  readonly onPoint: (name: string | undefined) => void;
}

/** One scale of price; delivery to the left, least margin to the right, the names between. */
export function PairedChart({ candidates, currency, pointed, onPoint }: PairedChartProps) {
  const titles = shortTitles(candidates.map(({ title }) => title));
  const price = scaleOver(candidates.map(priceOf), { count: 6, least: 1 });
  const weeks = scaleOver(
    candidates.map((c) => c.deliveryWeeks),
    { count: 6, least: 1 },
  );
  const margins = candidates.flatMap((c) => marginOf(c) ?? []);
  const margin = scaleOver(margins, { count: 5, least: 2, from: Math.min(0, ...margins) });
  const y = (value: number): number => bottom - price.at(value) * (bottom - size.top);
  const onWeeks: Scales = { x: (value) => left.to - weeks.at(value) * panel, y };
  const onMargin: Scales = { x: (value) => right.from + margin.at(value) * panel, y };
  const lines = spread(candidates.map((c) => y(priceOf(c)) - 4));
  const soonest = frontOf(candidates.map((c) => ({ price: priceOf(c), good: -c.deliveryWeeks })));
  const safest = frontOf(
    candidates.flatMap((c) => {
      const good = marginOf(c);
      return good === undefined ? [] : [{ price: priceOf(c), good }];
    }),
  );
  const unit = `thousand ${currencySign(currency)}`;
  const care = Math.min(onMargin.x(careBelow), right.to);
  return (
    <svg
      viewBox={`0 0 ${String(size.width)} ${String(size.height)}`}
      className="w-full"
      role="img"
      aria-label="Price against delivery and against least margin; the table below has the same figures"
    >
      {care > onMargin.x(0) && (
        <g>
          <rect
            x={onMargin.x(0)}
            y={size.top}
            width={care - onMargin.x(0)}
            height={bottom - size.top}
            fill="var(--caution-t)"
            opacity="0.55"
          />
          <text x={onMargin.x(0)} y={bottom + 34} className="text-[11px]" fill="var(--caution)">
            caution
          </text>
        </g>
      )}
      {price.ticks.map((tick) => (
        <g key={tick}>
          <path
            d={`M${String(left.from)} ${String(y(tick))}H${String(left.to)}M${String(right.from)} ${String(y(tick))}H${String(right.to)}`}
            stroke="var(--hair)"
          />
          <text x={left.from - 8} y={y(tick) + 4} textAnchor="end" className="text-[11px]" fill="var(--ink2)">
            {formatNumber(tick)}
          </text>
        </g>
      ))}
      <Panel
        {...left}
        title="Price and delivery"
        unit={`${unit}, weeks`}
        good="sooner"
        scale={weeks}
        scales={onWeeks}
      />
      <Panel
        {...right}
        title="Price and least margin"
        unit={`${unit}, % of the limit left`}
        good="safer"
        scale={margin}
        scales={onMargin}
      />
      <path
        d={`M${String(onMargin.x(0))} ${String(size.top)}V${String(bottom)}`}
        stroke="var(--ink)"
        strokeWidth="2.4"
      />
      {[
        stairs(soonest.map((p) => ({ x: onWeeks.x(-p.good), y: y(p.price) }))),
        stairs(safest.map((p) => ({ x: onMargin.x(p.good), y: y(p.price) }))),
      ].map((d) => (
        <path key={d} d={d} fill="none" stroke="var(--ink)" strokeWidth="1.1" strokeDasharray="5 3" />
      ))}
      {candidates.map((candidate, index) => (
        <CandidateLine
          key={candidate.name}
          candidate={candidate}
          title={titles[index] ?? ''}
          line={lines[index] ?? 0}
          weeks={onWeeks}
          margin={onMargin}
          isPointed={candidate.name === pointed}
          onPoint={onPoint}
        />
      ))}
    </svg>
  );
}
