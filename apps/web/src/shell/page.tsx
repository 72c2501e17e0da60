'use client';

import Link from 'next/link';
import { type ReactNode, useEffect } from 'react';
import { useMe } from '../api/use-me';
import { Brand } from '../look/brand';
import { Areas } from './areas';
import { PersonMenu } from './person-menu';
import { type Sheet, type SheetLinks, Sheets } from './sheets';

export interface Job {
  readonly number: string;
  readonly title: string;
  readonly client?: string | undefined;
}

export interface PageProps {
  /** Title of the browser tab. */
  readonly title: string;
  readonly sheet?: Sheet | undefined;
  readonly links?: SheetLinks | undefined;
  readonly job?: Job | undefined;
  /** At the right end of the head: state of saving and the action of this sheet. */
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** Head, sheets of the job and the content of a page. */
export function Page({ title, sheet, links, job, actions, children }: PageProps) {
  const me = useMe();
  useEffect(() => {
    document.title = `${title} · Flangewise`;
  }, [title]);
  return (
    <>
      <a
        href="#main"
        className="btn btn-ink absolute top-2 left-2 z-50 -translate-y-16 focus-visible:translate-y-0"
      >
        Skip to the content
      </a>
      <header className="flex min-h-12 flex-wrap items-center gap-x-4 gap-y-0 border-b border-rule bg-sheet px-4 lg:flex-nowrap lg:px-6 xl:gap-x-[22px] print:hidden">
        <Link href="/" className="py-2 text-inherit no-underline" aria-label="Flangewise, start">
          <Brand />
        </Link>
        {sheet !== undefined ? (
          <Sheets current={sheet} links={links ?? {}} />
        ) : (
          me !== undefined && <Areas me={me} />
        )}
        {job !== undefined && (
          <p className="hidden min-w-0 truncate text-ink2 xl:block">
            <b className="font-semibold text-ink">{job.number}</b>
            {'\u2002'}
            {job.client === undefined ? job.title : `${job.client}, ${job.title}`}
          </p>
        )}
        <span className="grow" />
        <div className="flex items-center gap-2 py-1.5">
          {actions}
          <PersonMenu />
        </div>
      </header>
      {children}
    </>
  );
}
