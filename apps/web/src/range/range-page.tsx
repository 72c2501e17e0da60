'use client';

import { type SlotName, slotNames, slots } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { useDeferredValue, useMemo, useState } from 'react';
import { errorText, mayHelpAgain } from '../api/api-error';
import { api, type Outputs } from '../api/client';
import { Empty, Fault } from '../look/notice';
import { Working } from '../look/working';
import { Page } from '../shell/page';
import { findParts, partsOf } from './find-parts';
import { RangeTable } from './range-table';

const everySlot = '';
const isSlot = (value: string): value is SlotName => slotNames.some((name) => name === value);

/** Search, slot and table. */
function Range({ range }: { readonly range: Outputs['catalogue']['get'] }) {
  const [text, setText] = useState('');
  const [slot, setSlot] = useState<SlotName>();
  const parts = useMemo(() => partsOf(range.items), [range.items]);
  // Typing goes on while the table follows.
  const wanted = useDeferredValue(text);
  const groups = useMemo(() => findParts(parts, { text: wanted, slot }), [parts, wanted, slot]);
  const prices = useMemo(
    () =>
      range.prices === null || range.priceList === null
        ? undefined
        : { of: range.prices, currency: range.priceList.currency },
    [range.prices, range.priceList],
  );
  const found = groups.reduce((sum, group) => sum + group.parts.length, 0);
  const all = () => {
    setText('');
    setSlot(undefined);
  };
  return (
    <>
      <div className="mb-2 grid gap-3 sm:grid-cols-[minmax(0,1fr)_220px_auto] sm:items-end">
        <label className="lab">
          Number, name or value
          <input
            type="search"
            className="field mt-1"
            placeholder="VS-1002, or bore 130 1.4404"
            autoComplete="off"
            value={text}
            onChange={(event) => setText(event.target.value)}
          />
        </label>
        <label className="lab">
          Slot
          <select
            className="field mt-1"
            value={slot ?? everySlot}
            onChange={({ target }) => setSlot(isSlot(target.value) ? target.value : undefined)}
          >
            <option value={everySlot}>every slot</option>
            {slotNames.map((name) => (
              <option key={name} value={name}>
                {slots[name].title}
              </option>
            ))}
          </select>
        </label>
        <p role="status" className="text-ink2 sm:min-w-[110px] sm:pb-1.5 sm:text-right">
          {found === parts.length
            ? `${String(found)} parts`
            : `${String(found)} of ${String(parts.length)} parts`}
        </p>
      </div>
      {found === 0 ? (
        <Empty text="No part has all of these words. Try fewer of them, or another slot.">
          <button type="button" className="btn" onClick={all}>
            Show every part
          </button>
        </Empty>
      ) : (
        <RangeTable groups={groups} prices={prices} />
      )}
    </>
  );
}

/** Every part that the maker has, to be looked up. */
export function RangePage() {
  const query = useQuery({
    queryKey: ['range'],
    queryFn: () => api.catalogue.get.query(),
    staleTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
  });
  const { data, isError, error } = query;
  return (
    <Page title="Range">
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        <div className="sec-head mb-4">
          <h1>Range</h1>
          {data !== undefined && (
            <p className="text-ink2">
              {data.revision}
              {data.priceList === null ? '' : `, price list ${data.priceList.id}`}
            </p>
          )}
        </div>
        {isError && (
          <Fault
            text={errorText(error)}
            action={mayHelpAgain(error) ? { title: 'Try again', run: () => void query.refetch() } : undefined}
          />
        )}
        {query.isPending && <Working text="Loading the range." />}
        {data !== undefined && <Range range={data} />}
      </main>
    </Page>
  );
}
