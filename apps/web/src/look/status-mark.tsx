import type { Status } from '@flangewise/model';
import { type MarkPiece, statusKeys, statusMarks } from '@flangewise/documents/drawings';

const colour: Readonly<Record<MarkPiece['fill'], string>> = {
  ink: 'currentColor',
  ground: 'var(--sheet)',
  none: 'none',
};

function Pieces({ status }: { readonly status: Status }) {
  return statusMarks[status].map((piece) => (
    <path
      key={piece.d}
      d={piece.d}
      fill={colour[piece.fill]}
      stroke={colour[piece.stroke]}
      strokeWidth={piece.width === 0 ? undefined : piece.width}
      strokeDasharray={piece.dash?.join(' ')}
      strokeLinejoin="round"
    />
  ));
}

/** Class that gives text the colour of a state. */
export const statusClass = (status: Status): string => `s-${statusKeys[status]}`;

/** The mark of a state; the word is its name for those who do not see it. */
export function StatusMark({ status, label }: { readonly status: Status; readonly label?: string }) {
  return (
    <svg
      className={`mk ${statusClass(status)}`}
      viewBox="-8 -8 16 16"
      role="img"
      aria-label={label ?? status}
    >
      <Pieces status={status} />
    </svg>
  );
}

/** The same within a chart, around a point. */
export function ChartMark({
  status,
  x,
  y,
}: {
  readonly status: Status;
  readonly x: number;
  readonly y: number;
}) {
  return (
    <g className={statusClass(status)} transform={`translate(${String(x)} ${String(y)}) scale(0.95)`}>
      <Pieces status={status} />
    </g>
  );
}
