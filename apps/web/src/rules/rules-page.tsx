'use client';

import { ruleIndexesOf } from '@flangewise/documents/drawings';
import type { RulePage } from '@flangewise/model';
import * as Tabs from '@radix-ui/react-tabs';
import Link from 'next/link';
import { useDeferredValue, useMemo, useState } from 'react';
import { Empty } from '../look/notice';
import { findRules, type NumberedPage } from './find-rules';
import { RuleFrame } from './rule-frame';
import { ruleHref } from './rule-href';
import type { RuleBook } from './use-rule-book';

function RuleTable({ found }: { readonly found: readonly NumberedPage[] }) {
  return (
    <div className="overflow-x-auto">
      <table className="tab">
        <thead>
          <tr>
            <th scope="col" className="w-10">
              No.
            </th>
            <th scope="col">Rule</th>
            <th scope="col" className="max-sm:hidden">
              Group
            </th>
            <th scope="col">Kind</th>
          </tr>
        </thead>
        <tbody>
          {found.map(({ number, page }) => (
            <tr key={page.id}>
              <td className="text-ink2">{number}</td>
              <th scope="row" className="text-[13px]! font-normal!">
                <Link href={ruleHref(page.id)}>{page.title}</Link>
                <span className="lab block">{page.id}</span>
              </th>
              <td className="max-sm:hidden">{page.group}</td>
              <td>{page.kind}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Index({ pages, title }: { readonly pages: readonly RulePage[]; readonly title: string }) {
  const index = useMemo(() => ruleIndexesOf(pages).find((one) => one.title === title), [pages, title]);
  return (
    <dl>
      {index?.entries.map((entry) => (
        <div
          key={`${entry.title} ${entry.note ?? ''}`}
          className="row grid gap-x-6 gap-y-1 py-2 md:grid-cols-[minmax(0,1fr)_minmax(0,2fr)]"
        >
          <dt>
            {entry.title}
            {entry.note !== undefined && entry.note !== 'published' && (
              <span className="lab block">{entry.note}</span>
            )}
          </dt>
          <dd className="flex flex-wrap gap-x-3 gap-y-1">
            {entry.rules.map((number) => {
              const page = pages[number - 1];
              return page === undefined ? null : (
                <Link key={number} href={ruleHref(page.id)} title={page.title} className="min-w-6 py-0.5">
                  {number}
                  <span className="sr-only"> {page.title}</span>
                </Link>
              );
            })}
          </dd>
        </div>
      ))}
    </dl>
  );
}

const listed = 'All rules';
const ways = [listed, 'By group', 'By slot', 'By source', 'By medium'] as const;

/** Ids of tabs have no spaces. */
const keyOf = (way: string): string => way.replace(' ', '-');

function Book({ book: { pages, revision } }: { readonly book: RuleBook }) {
  const [text, setText] = useState('');
  const wanted = useDeferredValue(text);
  const found = useMemo(() => findRules(pages, wanted), [pages, wanted]);
  return (
    <>
      <div className="sec-head mb-4">
        <h1>Rules</h1>
        <p className="text-ink2">
          {pages.length} rules, revision {revision}.{' '}
          <a href="/api/rule-book.pdf" target="_blank" rel="noreferrer" className="underline">
            As PDF
          </a>
        </p>
      </div>
      <Tabs.Root defaultValue={keyOf(listed)}>
        <Tabs.List aria-label="Ways into the rule book" className="mb-4 flex flex-wrap gap-1">
          {ways.map((way) => (
            <Tabs.Trigger
              key={way}
              value={keyOf(way)}
              className="btn btn-q data-[state=active]:font-semibold data-[state=active]:underline data-[state=active]:decoration-2 data-[state=active]:underline-offset-4"
            >
              {way}
            </Tabs.Trigger>
          ))}
        </Tabs.List>
        <Tabs.Content value={keyOf(listed)}>
          <div className="mb-2 grid gap-3 sm:grid-cols-[minmax(0,1fr)_auto] sm:items-end">
            <label className="lab">
              Title, slot, condition, source or medium
              <input
                type="search"
                className="field mt-1"
                placeholder="coupling torque"
                autoComplete="off"
                value={text}
                onChange={(event) => setText(event.target.value)}
              />
            </label>
            <p role="status" className="text-ink2 sm:min-w-[110px] sm:pb-1.5 sm:text-right">
              {found.length === pages.length
                ? `${String(pages.length)} rules`
                : `${String(found.length)} of ${String(pages.length)} rules`}
            </p>
          </div>
          {found.length === 0 ? (
            <Empty text="No rule has all of these words. Try fewer of them.">
              <button type="button" className="btn" onClick={() => setText('')}>
                Show every rule
              </button>
            </Empty>
          ) : (
            <RuleTable found={found} />
          )}
        </Tabs.Content>
        {ways.slice(1).map((way) => (
          <Tabs.Content key={way} value={keyOf(way)}>
            <Index pages={pages} title={way} />
          </Tabs.Content>
        ))}
      </Tabs.Root>
    </>
  );
}

/** Every rule in force, listed, and by group, slot, source and medium. */
export function RulesPage() {
  return <RuleFrame title="Rules">{(book) => <Book book={book} />}</RuleFrame>;
}
