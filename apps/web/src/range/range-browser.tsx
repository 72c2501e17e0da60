'use client';

import type { Item } from '@flangewise/model';
import { type ReactNode, useDeferredValue, useMemo, useState } from 'react';
import { Empty } from '../look/notice';
import { findParts, namesIn, partsOf, type Wanted } from './find-parts';
import { ItemDrawer } from './item-drawer';
import type { ListPrices } from './list-prices';
import { RangeFilter } from './range-filter';
import { type Mark, RangeTable } from './range-table';
import { useOpenItem } from './use-open-item';

export interface RangeBrowserProps {
  readonly items: readonly Item[];
  /** Price lists that this person sees, the first of them in the table. */
  readonly lists: readonly ListPrices[];
  readonly marks?: ReadonlyMap<string, Mark> | undefined;
  /** What can be done with an item beside looking at it. */
  readonly actions?: ((item: Item) => ReactNode) | undefined;
}

const nothingWanted: Wanted = { text: '', slot: undefined };
const stages: readonly Item['life'][] = ['introduced', 'current', 'to be discontinued', 'discontinued'];

/** The parts of a range: found by words, values and kinds, looked at one by one. */
export function RangeBrowser({ items, lists, marks, actions }: RangeBrowserProps) {
  const [wanted, setWanted] = useState(nothingWanted);
  const [open, show] = useOpenItem();
  const parts = useMemo(() => partsOf(items), [items]);
  const families = useMemo(() => namesIn(items, (item) => item.families), [items]);
  const materials = useMemo(() => namesIn(items, (item) => item.wetted), [items]);
  // Typing goes on while the table follows.
  const followed = useDeferredValue(wanted);
  const groups = useMemo(() => findParts(parts, followed), [parts, followed]);
  const found = groups.reduce((sum, group) => sum + group.parts.length, 0);
  const opened = open === undefined ? undefined : items.find(({ id }) => id === open);
  return (
    <>
      <RangeFilter
        wanted={wanted}
        onWanted={setWanted}
        families={families}
        materials={materials}
        lives={stages}
        count={
          found === parts.length
            ? `${String(found)} parts`
            : `${String(found)} of ${String(parts.length)} parts`
        }
      />
      {found === 0 ? (
        <Empty text="No part has all of these words and kinds. Try fewer of them.">
          <button type="button" className="btn" onClick={() => setWanted(nothingWanted)}>
            Show every part
          </button>
        </Empty>
      ) : (
        <RangeTable groups={groups} prices={lists[0]} marks={marks} onOpen={show} />
      )}
      {opened !== undefined && (
        <ItemDrawer item={opened} lists={lists} onClose={() => show(undefined)}>
          {actions?.(opened)}
        </ItemDrawer>
      )}
    </>
  );
}
