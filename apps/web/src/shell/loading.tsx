'use client';

import type { UseQueryResult } from '@tanstack/react-query';
import { Working } from '../look/working';
import { Page } from './page';
import type { Sheet, SheetLinks } from './sheets';
import { QueryFault } from './query-fault';

export interface LoadingProps {
  readonly sheet: Sheet;
  readonly links?: SheetLinks | undefined;
  /** What is loaded, for instance "the inquiry". */
  readonly what: string;
  readonly query: Pick<UseQueryResult, 'isError' | 'error' | 'refetch'>;
}

/** A sheet whose content is on its way, or did not come. */
export function Loading({ sheet, links, what, query }: LoadingProps) {
  return (
    <Page title={sheet} sheet={sheet} links={links}>
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        <h1 className="sr-only">{sheet}</h1>
        {query.isError ? <QueryFault query={query} /> : <Working text={`Loading ${what}.`} />}
      </main>
    </Page>
  );
}
