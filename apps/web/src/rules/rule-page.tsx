'use client';

import { usualCaution, type RulePage as RulePageContent, type RuleSample } from '@flangewise/model';
import Link from 'next/link';
import type { ReactNode } from 'react';
import { Empty } from '../look/notice';
import { StatusMark, statusClass } from '../look/status-mark';
import { Formula, Sources } from '../system/evidence-view';
import { RuleFrame } from './rule-frame';
import { ruleHref } from './rule-href';

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section className="sec mt-6">
      <h2>{title}</h2>
      {children}
    </section>
  );
}

function Parts({ page }: { readonly page: RulePageContent }) {
  return (
    <table className="tab">
      <thead>
        <tr>
          <th scope="col">Part</th>
          <th scope="col">As</th>
          <th scope="col">What it reads</th>
        </tr>
      </thead>
      <tbody>
        {page.parts.map(({ slot, title, as, attributes }) => (
          <tr key={`${slot} ${as ?? ''}`}>
            <th scope="row" className="text-[13px]! font-medium! text-ink!">
              {title}
            </th>
            <td className="text-ink2">{as ?? ''}</td>
            <td>{attributes.join(', ')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Calculations({ page }: { readonly page: RulePageContent }) {
  return page.calculations.map(({ id, title, formulas, range, source }) => (
    <div key={id} className="row py-2">
      <h3>{title}</h3>
      <ul className="flex flex-wrap gap-x-5">
        {formulas.map((formula) => (
          <li key={formula} className="font-serif italic">
            <Formula text={formula} />
          </li>
        ))}
      </ul>
      <p className="lab mt-1">Valid: {range}.</p>
      <Sources sources={source} />
    </div>
  ));
}

function Verdict({ says }: Pick<RuleSample, 'says'>) {
  if (says === 'silent') return <span className="text-ink2">silent</span>;
  return (
    <span className="flex items-center gap-1.5 whitespace-nowrap">
      <StatusMark status={says} />
      <span className={`font-medium ${statusClass(says)}`}>{says}</span>
    </span>
  );
}

function Samples({ samples }: Pick<RulePageContent, 'samples'>) {
  return (
    <ul>
      {samples.map(({ name, says, shown, texts }, i) => (
        <li
          key={`${name} ${String(i)}`}
          className="row grid items-start gap-x-4 gap-y-1 py-2 sm:grid-cols-[minmax(0,1fr)_150px_minmax(0,2fr)]"
        >
          <span>{name}</span>
          <Verdict says={says} />
          <span className="min-w-0">
            {texts.length === 0 ? <span className="text-ink2">Has nothing to say.</span> : texts.join(' ')}
            {shown !== undefined && <span className="lab block">{shown}</span>}
          </span>
        </li>
      ))}
    </ul>
  );
}

function Content({ page, number }: { readonly page: RulePageContent; readonly number: number }) {
  return (
    <article className="max-w-[912px]">
      <p className="lab">
        Rule {number}, {page.group}, {page.kind}
      </p>
      <h1>{page.title}</h1>
      <p className="lab">{page.id}</p>
      <p className="say mt-3">
        {[...page.decides, page.effect, ...(page.met === undefined ? [] : [`Met means: ${page.met}`])].join(
          ' ',
        )}
      </p>
      {page.margin !== undefined && <p className="say mt-1">Margin: {page.margin}</p>}
      {page.parts.length > 0 && (
        <Section title="What it reads of the parts">
          <div className="overflow-x-auto">
            <Parts page={page} />
          </div>
        </Section>
      )}
      {page.conditions.length > 0 && (
        <Section title="What it reads of the process">
          <ul className="mt-1 list-disc pl-5">
            {page.conditions.map((condition) => (
              <li key={condition}>{condition}</li>
            ))}
          </ul>
        </Section>
      )}
      {page.calculations.length > 0 && (
        <Section title="Calculations behind it">
          <Calculations page={page} />
        </Section>
      )}
      <Section title="What it says of its cases">
        <Samples samples={page.samples} />
      </Section>
      <Section title="Rests on">
        <ul className="mt-1">
          {page.sources.map(({ full, basis }) => (
            <li key={`${full} ${basis}`} className="py-0.5">
              {full}
              {basis === 'published' ? '' : `, ${basis}`}
            </li>
          ))}
        </ul>
      </Section>
      <p className="lab mt-6">{usualCaution('This rule')}</p>
    </article>
  );
}

/** One rule: what it reads, how it decides, what it says, what it rests on. */
export function RulePage({ id }: { readonly id: string }) {
  return (
    <RuleFrame title={`Rule ${id}`}>
      {({ pages }) => {
        const at = pages.findIndex((page) => page.id === id);
        const page = pages[at];
        const [before, after] = [pages[at - 1], page === undefined ? undefined : pages[at + 1]];
        return (
          <>
            <nav aria-label="Rule book" className="mb-4 flex flex-wrap gap-x-5 gap-y-1">
              <Link href="/rules">All rules</Link>
              {before !== undefined && <Link href={ruleHref(before.id)}>Before: {before.title}</Link>}
              {after !== undefined && <Link href={ruleHref(after.id)}>Next: {after.title}</Link>}
            </nav>
            {page === undefined ? (
              <Empty text={`There is no rule ${id} in force.`} />
            ) : (
              <Content page={page} number={at + 1} />
            )}
          </>
        );
      }}
    </RuleFrame>
  );
}
