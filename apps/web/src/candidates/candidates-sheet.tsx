'use client';

import { formatCount } from '@flangewise/quantities';
import { useState } from 'react';
import type { Outputs } from '../api/client';
import type { InquiryRecord } from '../api/use-inquiry';
import type { Engine } from '../engine/use-engine';
import { Fault } from '../look/notice';
import { CandidateTable } from './candidate-table';
import { NothingFits } from './nothing-fits';
import { PairedChart } from './paired-chart';
import { SavedSystems } from './saved-systems';
import { StillOpen, WhatFollows } from './what-follows';
import { WhyNotOthers } from './why-not-others';

type Answer = Outputs['systems']['solve'];

export interface CandidatesSheetProps {
  readonly inquiry: InquiryRecord;
  readonly answer: Answer;
  readonly engine: Engine | undefined;
  readonly mayTake: boolean;
  readonly isBusy: boolean;
  readonly trouble: string | undefined;
  readonly onTake: (candidate: Answer['candidates'][number]) => void;
}

const words = [
  'No',
  'One',
  'Two',
  'Three',
  'Four',
  'Five',
  'Six',
  'Seven',
  'Eight',
  'Nine',
  'Ten',
  'Eleven',
  'Twelve',
];

const headline = (count: number): string =>
  count === 0
    ? 'Nothing in the range fits'
    : count === 1
      ? 'One system fits'
      : `${words[count] ?? String(count)} systems fit`;

/** What was found: the chart, the reasons against the others, the ranked list, and what follows from the inquiry. */
export function CandidatesSheet(props: CandidatesSheetProps) {
  const { inquiry, answer, engine, mayTake, isBusy, trouble, onTake } = props;
  const [pointed, setPointed] = useState<string>();
  const { candidates } = answer;
  const currency = engine?.currency;
  const hasChart =
    currency !== undefined && candidates.length > 1 && candidates.every(({ price }) => price !== undefined);
  const table = candidates.length > 0 && (
    <CandidateTable
      {...{ candidates, engine, mayTake, isBusy, pointed, onTake }}
      inquiryId={inquiry.id}
      onPoint={setPointed}
    />
  );
  return (
    <div className="grid gap-x-8 gap-y-6 xl:grid-cols-[minmax(0,936px)_minmax(0,1fr)]">
      <section
        className={`min-w-0 self-start ${hasChart ? 'lg:border lg:border-rule lg:bg-sheet lg:px-6 lg:py-3.5' : ''}`}
      >
        <div className="mb-2.5 flex flex-wrap items-baseline gap-x-[18px]">
          <h1>{headline(candidates.length)}</h1>
          {hasChart && (
            <p className="say-sm max-lg:hidden">
              In both panels lower is cheaper and further right is better. The dashed line joins the
              candidates that no other beats.
            </p>
          )}
          {answer.result === 'not proved' && <p className="say-sm">The search was stopped: more may fit.</p>}
          {answer.count !== null && answer.count !== '0' && (
            <p className="lab">{formatCount(answer.count)} combinations of parts fit in all</p>
          )}
          {hasChart && answer.openPoints.length > 0 && (
            <a href="#still-open" className="ml-auto">
              {answer.openPoints.length} still open
            </a>
          )}
        </div>
        {candidates.length === 0 && (
          <NothingFits inquiryId={inquiry.id} document={inquiry.document} mayChange={inquiry.mayChange} />
        )}
        {hasChart ? (
          <div className="max-lg:hidden">
            <PairedChart candidates={candidates} currency={currency} pointed={pointed} onPoint={setPointed} />
          </div>
        ) : (
          table
        )}
        {trouble !== undefined && <Fault text={trouble} />}
        {!hasChart && (
          <div className="mt-8 grid gap-x-8 gap-y-6 md:grid-cols-2">
            <WhatFollows answer={answer} />
          </div>
        )}
      </section>
      {hasChart && <div className="min-w-0 xl:order-1 xl:col-span-2">{table}</div>}
      <aside className="grid min-w-0 content-start gap-6">
        <SavedSystems systems={inquiry.systems} />
        <WhyNotOthers refusals={answer.refusals} someFit={candidates.length > 0} />
        {!hasChart && <StillOpen points={answer.openPoints} />}
      </aside>
      {hasChart && (
        <div className="mt-2 grid min-w-0 gap-x-8 gap-y-6 md:grid-cols-2 xl:order-2 xl:col-span-2 xl:grid-cols-4">
          <StillOpen points={answer.openPoints} />
          <WhatFollows answer={answer} />
        </div>
      )}
    </div>
  );
}
