'use client';

import type { SlotPath } from '@flangewise/model';
import { type KeyboardEvent, useRef } from 'react';
import { marginText } from '../figures/margin';
import { StatusMark, statusClass } from '../look/status-mark';
import type { SlotRow } from './slot-rows';

export interface SlotListProps {
  readonly rows: readonly SlotRow[];
  readonly selected: SlotPath | undefined;
  readonly nameOf: (id: string | null | undefined) => string;
  readonly onSelect: (path: SlotPath) => void;
}

const choiceText = (row: SlotRow, nameOf: SlotListProps['nameOf']): string =>
  row.choice === undefined ? 'open' : row.choice === null ? 'none' : nameOf(row.choice);

/** Every slot as a row: for the keyboard, for narrow screens, and for those who do not see the drawing. */
export function SlotList({ rows, selected, nameOf, onSelect }: SlotListProps) {
  const list = useRef<HTMLUListElement>(null);
  /** Up and down, home and end move along the list. */
  const move = (event: KeyboardEvent): void => {
    const buttons = [...(list.current?.querySelectorAll('button') ?? [])];
    const at = buttons.findIndex((button) => button === document.activeElement);
    const goal = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: buttons.length - 1 }[event.key];
    if (goal === undefined || at < 0) return;
    event.preventDefault();
    buttons[Math.min(Math.max(goal, 0), buttons.length - 1)]?.focus();
  };
  return (
    <ul ref={list} onKeyDown={move} aria-label="Slots of the system">
      {rows.map((row) => (
        <li key={row.path} className="row first:border-t-0">
          <button
            type="button"
            aria-current={row.path === selected ? 'true' : undefined}
            className={`grid min-h-11 w-full cursor-pointer grid-cols-[26px_minmax(0,1fr)_auto_22px_52px] items-center gap-x-2 px-2.5 py-1 text-left outline-offset-[-2px] hover:bg-given-t ${row.path === selected ? 'bg-given-t outline-2 outline-given' : ''}`}
            onClick={() => onSelect(row.path)}
          >
            <b className="font-semibold">{row.number ?? ''}</b>
            <span className="min-w-0">
              <span className="block leading-4">{row.title}</span>
              <span className={`lab block truncate ${row.choice === undefined ? 's-open font-medium' : ''}`}>
                {choiceText(row, nameOf)}
              </span>
            </span>
            <span className="lab whitespace-nowrap">
              {row.fit === undefined ? '' : `${String(row.fit)} of ${String(row.options ?? 0)} fit`}
            </span>
            <span>{row.status !== undefined && <StatusMark status={row.status} />}</span>
            <span
              className={`num font-medium ${row.status === undefined || row.status === 'met' ? '' : statusClass(row.status)}`}
            >
              {row.margin === undefined ? '' : marginText(row.margin)}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
