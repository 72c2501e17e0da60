import type { Status } from '@flangewise/model';
import { statusClass } from './status-mark';

export interface CheckBarProps {
  readonly status: Status;
  /** Share of the limit that is used; undefined where nothing can be divided. */
  readonly utilisation: number | undefined;
  readonly width?: number;
  readonly height?: number;
}

/** The scale ends at 130 % of the limit, of a special at 155 %. */
const endOf = (status: Status): number => (status === 'outside standard range' ? 1.55 : 1.3);

const hatchFrom = (from: number, to: number, { top, bottom }: { top: number; bottom: number }): string => {
  const strokes: string[] = [];
  for (let x = from + 2; x + 4 <= to; x += 4)
    strokes.push(`M${String(x)} ${String(bottom)}L${String(x + 4)} ${String(top)}`);
  return strokes.join('');
};

/** Demand against limit: the heavy stroke is the limit; past it the bar is hatched. */
export function CheckBar({ status, utilisation, width = 118, height = 14 }: CheckBarProps) {
  const middle = height / 2;
  const half = 3;
  const [top, bottom] = [middle - half, middle + half];
  const limit = width / endOf(status);
  const demand = utilisation === undefined ? undefined : Math.min(Math.max(0, utilisation) * limit, width);
  const solid = demand === undefined ? 0 : Math.min(demand, limit);
  const colour = status === 'met' ? 'var(--ink2)' : 'currentColor';
  return (
    <svg
      className={`ub max-w-full ${statusClass(status)}`}
      width={width}
      height={height}
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      aria-hidden="true"
    >
      <path d={`M0 ${String(middle)}H${String(width)}`} stroke="var(--hair)" />
      <path d={`M${String(limit / 2)} ${String(middle - 2.5)}v5`} stroke="var(--rule)" />
      <path d={`M.5 ${String(middle - 3.5)}v7`} stroke="var(--rule)" />
      {demand === undefined ? (
        <path
          d={`M1 ${String(top)}H${String(limit)}M1 ${String(bottom)}H${String(limit)}`}
          stroke="currentColor"
          strokeDasharray="3 3"
          fill="none"
        />
      ) : (
        <rect className="fill" x="0" y={top} width={solid} height={2 * half} fill={colour} />
      )}
      {demand !== undefined && demand > limit + 1 && (
        <>
          <path d={hatchFrom(limit, demand, { top, bottom })} stroke="currentColor" strokeWidth="1.3" />
          <rect
            x={limit}
            y={top}
            width={demand - limit}
            height={2 * half}
            fill="none"
            stroke="currentColor"
          />
        </>
      )}
      <path d={`M${String(limit)} 0V${String(height)}`} stroke="var(--ink)" strokeWidth="2" />
      {status === 'outside standard range' && (
        <path
          d={`M${String(width - 6.3)} 1V${String(height - 1)}M${String(width - 3.3)} 1V${String(height - 1)}`}
          stroke="var(--special)"
        />
      )}
    </svg>
  );
}
