'use client';

import { useMemo } from 'react';
import { useMe } from '../api/use-me';
import { Working } from '../look/working';
import { DraftItems } from './draft-items';
import { listPricesOf } from './list-prices';
import { RangeBrowser } from './range-browser';
import type { Mark } from './range-table';
import { type FrameContent, RevisionFrame } from './revision-frame';
import { beforeOf, type Comparison, mayKeep, useComparison, useRevision } from './use-revision';
import { QueryFault } from '../shell/query-fault';

/** How each item that differs stands to the revision before. */
const marksOf = (comparison: Comparison | undefined): ReadonlyMap<string, Mark> => {
  const marks = new Map<string, Mark>();
  for (const { id } of comparison?.prices ?? []) marks.set(id, 'new price');
  for (const { id } of comparison?.changed ?? []) marks.set(id, 'changed');
  for (const { id } of comparison?.added ?? []) marks.set(id, 'new');
  return marks;
};

function Items({ revision: head, all }: FrameContent) {
  const me = useMe();
  const query = useRevision(head.id);
  const revision = query.data;
  const comparison = useComparison({
    from: beforeOf(head, all)?.id,
    to: head.id,
    version: revision?.version,
  });
  const marks = useMemo(() => marksOf(comparison.data), [comparison.data]);
  const lists = useMemo(
    () => (revision === undefined ? [] : listPricesOf(revision.catalogue.priceLists)),
    [revision],
  );
  if (query.isError) return <QueryFault query={query} />;
  if (revision === undefined) return <Working text="Loading the items." />;
  return head.state === 'draft' && mayKeep(me) ? (
    <DraftItems revision={revision} lists={lists} marks={marks} />
  ) : (
    <RangeBrowser items={revision.catalogue.items} lists={lists} marks={marks} />
  );
}

/** The items of one revision; of a draft, to be changed. */
export function ItemsPage({ id }: { readonly id: string }) {
  return (
    <RevisionFrame id={id} sheet="Items">
      {(content) => <Items {...content} />}
    </RevisionFrame>
  );
}
