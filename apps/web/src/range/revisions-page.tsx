'use client';

import Link from 'next/link';
import { useMe } from '../api/use-me';
import { momentText } from '../figures/moment';
import { Working } from '../look/working';
import { Page } from '../shell/page';
import { DraftButton } from './draft-button';
import { RevisionChip } from './revision-chip';
import { mayKeep, type RevisionHead, useRevisions } from './use-revision';
import { QueryFault } from '../shell/query-fault';

function RevisionTable({ revisions }: { readonly revisions: readonly RevisionHead[] }) {
  const now = new Date();
  const day = (moment: string | null): string => (moment === null ? '–' : momentText(new Date(moment), now));
  return (
    <table className="tab">
      <caption className="sr-only">Revisions of the range</caption>
      <thead>
        <tr>
          <th scope="col" className="w-36">
            State
          </th>
          <th scope="col">Revision</th>
          <th scope="col" className="max-md:hidden">
            Why
          </th>
          <th scope="col" className="num max-sm:hidden">
            Items
          </th>
          <th scope="col" className="max-lg:hidden">
            By
          </th>
          <th scope="col" className="num max-sm:hidden">
            Opened
          </th>
          <th scope="col" className="num max-md:hidden">
            In force from
          </th>
        </tr>
      </thead>
      <tbody>
        {revisions.map((revision) => (
          <tr key={revision.id} className="relative hover:bg-given-t">
            <td>
              <RevisionChip revision={revision} />
            </td>
            <td>
              <Link
                href={`/range/revisions/${revision.id}`}
                className="font-medium text-ink no-underline after:absolute after:inset-0"
              >
                {revision.name}
              </Link>
              <span className="lab block">
                {revision.basedOn === null ? 'the first' : `after ${revision.basedOn}`}
              </span>
            </td>
            <td className="say-sm max-md:hidden">{revision.note}</td>
            <td className="num text-ink2 max-sm:hidden">{revision.items}</td>
            <td className="text-ink2 max-lg:hidden">
              {revision.releasedBy ?? revision.author ?? 'the product'}
            </td>
            <td className="num text-ink2 max-sm:hidden">{day(revision.createdAt)}</td>
            <td className="num text-ink2 max-md:hidden">{day(revision.releasedAt)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Every state of the range: the draft, the one in force, and those before it. */
export function RevisionsPage() {
  const me = useMe();
  const query = useRevisions();
  return (
    <Page title="Revisions" actions={mayKeep(me) && <DraftButton revisions={query.data} />}>
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        <div className="sec-head mb-4">
          <h1>Revisions of the range</h1>
        </div>
        <p className="say mb-4 max-w-[76ch]">
          Offers keep the revision that they were made by. What is released stays as it is; changes are made
          in a draft, and everybody works with them once it is released.
        </p>
        {query.isError && <QueryFault query={query} />}
        {query.isPending && <Working text="Loading the revisions." />}
        {query.data !== undefined && <RevisionTable revisions={query.data} />}
      </main>
    </Page>
  );
}
