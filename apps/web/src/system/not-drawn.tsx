'use client';

import type { SlotPath } from '@flangewise/model';
import { StatusMark } from '../look/status-mark';
import type { SlotRow } from './slot-rows';

export interface NotDrawnProps {
  readonly rows: readonly SlotRow[];
  readonly drawn: ReadonlySet<SlotPath>;
  readonly selected: SlotPath | undefined;
  readonly onSelect: (path: SlotPath) => void;
}

interface GroupProps extends Pick<NotDrawnProps, 'selected' | 'onSelect'> {
  readonly title: string;
  readonly rows: readonly SlotRow[];
}

function Group({ title, rows, selected, onSelect }: GroupProps) {
  if (rows.length === 0) return null;
  return (
    <div className="grid grid-cols-[74px_minmax(0,1fr)] items-baseline gap-x-2">
      <dt className="lab">{title}</dt>
      <dd className="flex flex-wrap gap-x-3">
        {rows.map((row) => (
          <button
            key={row.path}
            type="button"
            aria-current={row.path === selected ? 'true' : undefined}
            className={`min-h-6 cursor-pointer whitespace-nowrap hover:text-given hover:underline ${row.path === selected ? 'font-semibold text-given' : ''}`}
            onClick={() => onSelect(row.path)}
          >
            {row.number !== undefined && <span className="text-ink2">{row.number}&#8194;</span>}
            {row.title}
            {row.status !== undefined && row.status !== 'met' && (
              <>
                {' '}
                <StatusMark status={row.status} />
              </>
            )}
          </button>
        ))}
      </dd>
    </div>
  );
}

/** Slots that the drawing does not show: chosen ones that have no place in it, open ones, and those that are empty. */
export function NotDrawn({ rows, drawn, selected, onSelect }: NotDrawnProps) {
  const chosen = rows.filter((row) => typeof row.choice === 'string' && !drawn.has(row.path));
  const open = rows.filter((row) => row.choice === undefined);
  const none = rows.filter((row) => row.choice === null);
  return (
    <dl className="grid content-start gap-y-0.5">
      <Group title="Others" rows={chosen} selected={selected} onSelect={onSelect} />
      <Group title="Still open" rows={open} selected={selected} onSelect={onSelect} />
      <Group title="Without" rows={none} selected={selected} onSelect={onSelect} />
    </dl>
  );
}
