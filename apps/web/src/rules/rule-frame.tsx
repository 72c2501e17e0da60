'use client';

import type { ReactNode } from 'react';
import { useMe } from '../api/use-me';
import { Fault } from '../look/notice';
import { Working } from '../look/working';
import { NotFound } from '../shell/not-found';
import { Page } from '../shell/page';
import { type RuleBook, useRuleBook } from './use-rule-book';

export interface RuleFrameProps {
  readonly title: string;
  readonly children: (book: RuleBook) => ReactNode;
}

/** A page of the rule book: for the people of the maker. */
export function RuleFrame({ title, children }: RuleFrameProps) {
  const me = useMe();
  const { data, error, isPending, refetch } = useRuleBook();
  if (me?.role === 'customer') return <NotFound />;
  return (
    <Page title={title}>
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
        {error !== null && (
          <Fault text={error.message} action={{ title: 'Try again', run: () => void refetch() }} />
        )}
        {isPending && <Working text="Reading the rules." />}
        {data !== undefined && children(data)}
      </main>
    </Page>
  );
}
