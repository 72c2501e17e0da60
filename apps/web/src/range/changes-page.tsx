'use client';

import { useState } from 'react';
import { useMe } from '../api/use-me';
import { momentText } from '../figures/moment';
import { Empty } from '../look/notice';
import { Working } from '../look/working';
import { DifferenceView, differenceText, isNothing } from './difference-view';
import { DraftHistory } from './draft-history';
import { ReleaseDraft } from './release-draft';
import { type FrameContent, RevisionFrame } from './revision-frame';
import { standingOf } from './revision-chip';
import { TouchedOffers } from './touched-offers';
import { beforeOf, mayKeep, type RevisionHead, useComparison } from './use-revision';
import { QueryFault } from '../shell/query-fault';

interface AgainstProps {
  readonly from: string;
  readonly others: readonly RevisionHead[];
  readonly onFrom: (id: string) => void;
}

/** Chooses the revision that this one is held against. */
function Against({ from, others, onFrom }: AgainstProps) {
  const now = new Date();
  return (
    <label className="lab w-72 max-w-full">
      Compared with
      <select className="field mt-1" value={from} onChange={({ target }) => onFrom(target.value)}>
        {others.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}, {standingOf(one)}, {momentText(new Date(one.releasedAt ?? one.createdAt), now)}
          </option>
        ))}
      </select>
    </label>
  );
}

function Changes({ revision, all }: FrameContent) {
  const me = useMe();
  const others = all.filter(({ id }) => id !== revision.id);
  const [chosen, setChosen] = useState<string>();
  const before = beforeOf(revision, all);
  const from = chosen ?? before?.id ?? others[0]?.id;
  const query = useComparison({ from, to: revision.id, version: revision.version });
  const isDraft = revision.state === 'draft';
  const isUnchanged = query.data !== undefined && from === before?.id && isNothing(query.data);
  if (from === undefined)
    return <Empty text="This is the only revision so far. There is nothing to hold it against." />;
  return (
    <div className="grid gap-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)]">
      <div className="grid min-w-0 content-start gap-5">
        <div className="flex flex-wrap items-end justify-between gap-3">
          <Against from={from} others={others} onFrom={setChosen} />
          <p role="status" className="text-ink2">
            {query.data !== undefined && differenceText(query.data)}
          </p>
        </div>
        {query.isError && <QueryFault query={query} />}
        {query.isPending && <Working text="Comparing the two revisions." />}
        {query.data !== undefined &&
          (isNothing(query.data) ? (
            <Empty
              text={
                isDraft
                  ? 'The draft says the same so far. Change an item, or take in a file.'
                  : 'Both say the same.'
              }
            />
          ) : (
            <DifferenceView difference={query.data} />
          ))}
      </div>
      <aside className="grid min-w-0 content-start gap-6">
        {isDraft && mayKeep(me) && <ReleaseDraft revision={revision} hasChanges={!isUnchanged} />}
        {revision.note !== '' && (
          <section className="sec">
            <h2 className="mb-1">Why it was made</h2>
            <p className="say">{revision.note}</p>
          </section>
        )}
        {query.data !== undefined && <TouchedOffers offers={query.data.touchedOffers} />}
        <DraftHistory revision={revision} />
      </aside>
    </div>
  );
}

/** What a revision has otherwise than the one before; a draft is released here. */
export function ChangesPage({ id }: { readonly id: string }) {
  return (
    <RevisionFrame id={id} sheet="Changes">
      {(content) => <Changes {...content} />}
    </RevisionFrame>
  );
}
