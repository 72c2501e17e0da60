'use client';

import Link from 'next/link';
import type { ReactNode } from 'react';
import { momentText } from '../figures/moment';
import { Fault, Note } from '../look/notice';
import { Working } from '../look/working';
import { Page } from '../shell/page';
import { sheetShape, sheetShapeCurrent } from '../shell/sheets';
import { RevisionChip } from './revision-chip';
import { type RevisionHead, useRevisions } from './use-revision';
import { QueryFault } from '../shell/query-fault';

/** The sheets of a revision and where each is. */
const sheets = {
  Items: '',
  Changes: '/changes',
  Files: '/files',
  Audit: '/audit',
} as const;

export type RevisionSheet = keyof typeof sheets;

const sheetNames = Object.keys(sheets) as readonly RevisionSheet[];

function SheetLinks({ id, current }: { readonly id: string; readonly current: RevisionSheet }) {
  return (
    <nav aria-label="Sheets of this revision" className="-mx-2 flex min-h-11 overflow-x-auto md:-mx-3">
      {sheetNames.map((sheet) => (
        <Link
          key={sheet}
          href={`/range/revisions/${id}${sheets[sheet]}`}
          aria-current={sheet === current ? 'page' : undefined}
          className={sheet === current ? sheetShapeCurrent : sheetShape}
        >
          {sheet}
        </Link>
      ))}
    </nav>
  );
}

const historyOf = ({ author, createdAt, releasedAt, releasedBy, basedOn }: RevisionHead): string => {
  const now = new Date();
  const day = (moment: string): string => momentText(new Date(moment), now);
  return [
    author === null ? `came with the product, ${day(createdAt)}` : `opened by ${author}, ${day(createdAt)}`,
    ...(basedOn === null ? [] : [`after ${basedOn}`]),
    ...(releasedAt === null || releasedBy === null ? [] : [`released by ${releasedBy}, ${day(releasedAt)}`]),
  ].join('; ');
};

export interface FrameContent {
  readonly revision: RevisionHead;
  readonly all: readonly RevisionHead[];
}

export interface RevisionFrameProps {
  readonly id: string;
  readonly sheet: RevisionSheet;
  readonly children: (content: FrameContent) => ReactNode;
}

/** One sheet of a revision below its name, state and the way to the other sheets. */
export function RevisionFrame({ id, sheet, children }: RevisionFrameProps) {
  const query = useRevisions();
  const revision = query.data?.find((one) => one.id === id);
  const isUnknown = query.data !== undefined && revision === undefined;
  return (
    <Page title={revision === undefined ? sheet : `${sheet}, ${revision.name}`}>
      {revision !== undefined && (
        <div className="border-b border-rule bg-sheet px-4 lg:px-6">
          <div className="mx-auto max-w-[1440px] pt-3">
            <div className="flex flex-wrap items-center gap-x-3 gap-y-1">
              <h1 className="first-letter:uppercase">{revision.name}</h1>
              <RevisionChip revision={revision} />
              <p className="text-ink2">{historyOf(revision)}</p>
            </div>
            <SheetLinks id={id} current={sheet} />
          </div>
        </div>
      )}
      {revision?.state === 'discarded' && (
        <Note>This draft was discarded. It is kept to be looked at, and nothing of it comes in force.</Note>
      )}
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-5 lg:px-6">
        {query.isError && <QueryFault query={query} />}
        {query.isPending && <Working text="Loading the revisions." />}
        {isUnknown && (
          <Fault text="There is no revision at this address. The list of revisions has all that there are." />
        )}
        {revision !== undefined && query.data !== undefined && children({ revision, all: query.data })}
      </main>
    </Page>
  );
}
