'use client';

import { slots } from '@flangewise/model';
import { thinSpace } from '@flangewise/quantities';
import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { priceText } from '../figures/price';
import type { Part, PartGroup } from './find-parts';
import type { ListPrices } from './list-prices';
import { type RangeRow, rangeRows } from './range-rows';

/** How a part stands to the revision before. */
export type Mark = 'new' | 'changed' | 'new price';

export interface RangeTableProps {
  readonly groups: readonly PartGroup[];
  /** Undefined for those who see no prices; they see no delivery time of single parts either. */
  readonly prices: ListPrices | undefined;
  readonly marks?: ReadonlyMap<string, Mark> | undefined;
  readonly onOpen: (id: string) => void;
}

const together = (texts: readonly string[]): string => texts.join(' · ');

/** Heights before they are measured. */
const slotHeight = 45;
const partHeight = 49;

interface PartRowProps extends Pick<RangeTableProps, 'prices' | 'onOpen'> {
  readonly part: Part;
  readonly mark: Mark | undefined;
}

function PartCells({ part, mark, prices, onOpen }: PartRowProps) {
  const { item, rating, values, mass } = part;
  const price = prices?.of[item.id];
  return (
    <>
      <td className="whitespace-nowrap text-ink2 max-sm:hidden">{item.id}</td>
      <td>
        <span className="lab block sm:hidden">{item.id}</span>
        <button
          type="button"
          data-part={item.id}
          className="cursor-pointer text-left font-medium after:absolute after:inset-0"
          onClick={() => onOpen(item.id)}
        >
          {item.name}
        </button>
        {mark !== undefined && <span className="lab ml-2 text-given!">{mark}</span>}
        {item.life !== 'current' && <span className="lab ml-2">{item.life}</span>}
        <span className="block text-ink2 lg:hidden">{together([...values, ...rating])}</span>
      </td>
      <td className="text-ink2 max-lg:hidden">
        {together(values)}
        <span className="block xl:hidden">{together(rating)}</span>
      </td>
      <td className="text-ink2 max-xl:hidden">{together(rating)}</td>
      <td className="num text-ink2 max-md:hidden">{mass}</td>
      {prices !== undefined && (
        <>
          <td className="num text-ink2 max-sm:hidden">
            {item.leadTimeDays}
            {thinSpace}d
          </td>
          <td className="num">{price === undefined ? 'not listed' : priceText(price, prices.currency)}</td>
        </>
      )}
    </>
  );
}

function SlotCells({ row }: { readonly row: Extract<RangeRow, { is: 'slot' }> }) {
  return (
    <th scope="rowgroup" className="border-b-0! pt-5! text-[13px]! whitespace-nowrap text-ink!">
      <span className="font-semibold">{slots[row.slot].title}</span>{' '}
      <span className="lab">{row.count === 1 ? 'one part' : `${String(row.count)} parts`}</span>
    </th>
  );
}

/** Where the table begins on the page, to tell which of its lines are in view. */
function useTop() {
  const table = useRef<HTMLTableElement>(null);
  const [top, setTop] = useState(0);
  useLayoutEffect(() => {
    const measure = (): void => {
      if (table.current !== null) setTop(table.current.getBoundingClientRect().top + scrollY);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(document.body);
    return () => observer.disconnect();
  }, []);
  return { table, top };
}

/** Height that lines out of view take. */
function Spacer({ height }: { readonly height: number }) {
  if (height <= 0) return null;
  return (
    <tr aria-hidden="true">
      <td className="border-0! p-0!" style={{ height }} />
    </tr>
  );
}

function Head({ prices }: Pick<RangeTableProps, 'prices'>) {
  return (
    <thead>
      <tr aria-rowindex={1}>
        <th scope="col" className="w-20 max-sm:hidden">
          Number
        </th>
        <th scope="col" className="lg:w-[28%]">
          Name
        </th>
        <th scope="col" className="max-lg:hidden">
          Main values
        </th>
        <th scope="col" className="w-[264px] max-xl:hidden">
          Stands
        </th>
        <th scope="col" className="num w-20 max-md:hidden">
          Mass
        </th>
        {prices !== undefined && (
          <>
            <th scope="col" className="num w-16 max-sm:hidden">
              Ready in
            </th>
            <th scope="col" className="num w-[84px]">
              List price
            </th>
          </>
        )}
      </tr>
    </thead>
  );
}

/** The parts of the range, slot by slot; only the lines in view are there. Arrow keys go from part to part. */
export function RangeTable({ groups, prices, marks, onOpen }: RangeTableProps) {
  const rows = useMemo(() => rangeRows(groups), [groups]);
  const { table, top } = useTop();
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: (i) => (rows[i]?.is === 'slot' ? slotHeight : partHeight),
    getItemKey: (i) => {
      const row = rows[i];
      return row === undefined ? i : row.is === 'slot' ? row.slot : row.part.item.id;
    },
    overscan: 12,
    scrollMargin: top,
  });
  const shown = virtual.getVirtualItems();
  const before = (shown[0]?.start ?? top) - top;
  const after = virtual.getTotalSize() - ((shown.at(-1)?.end ?? top) - top);
  const go = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    const from = (event.target as HTMLElement).closest('tr')?.dataset['index'];
    if (step === 0 || from === undefined) return;
    event.preventDefault();
    let to = Number(from) + step;
    while (rows[to]?.is === 'slot') to += step;
    if (rows[to] === undefined) return;
    virtual.scrollToIndex(to, { align: 'auto' });
    const partAt = (): HTMLElement | null | undefined =>
      table.current?.querySelector<HTMLElement>(`tr[data-index="${String(to)}"] button`);
    // What is there already is gone to at once, so that the next key meets it.
    const there = partAt();
    if (there) there.focus();
    else requestAnimationFrame(() => partAt()?.focus());
  };
  return (
    <table ref={table} className="tab table-fixed" aria-rowcount={rows.length + 1} onKeyDown={go}>
      <caption className="sr-only">Parts of the range</caption>
      <Head prices={prices} />
      <tbody>
        <Spacer height={before} />
        {shown.map(({ index, key }) => {
          const row = rows[index];
          if (row === undefined) return null;
          return (
            <tr
              key={key}
              ref={virtual.measureElement}
              data-index={index}
              aria-rowindex={index + 2}
              className={row.is === 'part' ? 'relative hover:bg-given-t' : ''}
            >
              {row.is === 'slot' ? (
                <SlotCells row={row} />
              ) : (
                <PartCells
                  part={row.part}
                  mark={marks?.get(row.part.item.id)}
                  prices={prices}
                  onOpen={onOpen}
                />
              )}
            </tr>
          );
        })}
        <Spacer height={after} />
      </tbody>
    </table>
  );
}
