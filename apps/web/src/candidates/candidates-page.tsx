'use client';

import { inquirySchema, readDocument } from '@flangewise/model';
import { useQueryClient } from '@tanstack/react-query';
import Link from 'next/link';
import { useState } from 'react';
import { errorText } from '../api/api-error';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { ConditionStrip } from '../conditions/condition-strip';
import { conditionsOfInquiry } from '../conditions/conditions-of-inquiry';
import { useEngine } from '../engine/use-engine';
import { timeText } from '../figures/moment';
import { Fault } from '../look/notice';
import { Working } from '../look/working';
import { Loading } from '../shell/loading';
import { Page } from '../shell/page';
import { arrangementText, setNamesOf } from '../system/set-names';
import { SetTabs } from '../system/set-tabs';
import { useKeep } from '../system/use-keep';
import { CandidatesSheet } from './candidates-sheet';
import { useCandidateView } from './use-candidate-view';
import { solvedKey, useSolved } from './use-solved';

/** Systems that answer an inquiry, ranked, with the reasons against the others. */
export function CandidatesPage({ inquiryId }: { readonly inquiryId: string }) {
  const me = useMe();
  const [set, setSet] = useState(0);
  const queries = useQueryClient();
  const { inquiry, job, links, query } = useInquiry(inquiryId);
  const engine = useEngine(inquiry && { inquiry: inquiry.document });
  const solved = useSolved(inquiry);
  const take = useKeep(inquiryId);
  const first = useCandidateView(engine.data, solved.data?.candidates[0]?.system);
  if (inquiry === undefined || me === undefined)
    return <Loading sheet="Candidates" what="the inquiry" query={query} />;
  const read = readDocument(inquirySchema, inquiry.document);
  const setNames = setNamesOf(inquiry.document.sets ?? []);
  const isStopped = solved.data === undefined && !solved.isError && solved.fetchStatus === 'idle';
  return (
    <Page
      title="Candidates"
      sheet="Candidates"
      job={job}
      links={links}
      actions={
        <>
          {solved.data !== undefined && (
            <span className="lab max-lg:hidden">
              Solved {timeText(new Date(solved.dataUpdatedAt))}
              {engine.data?.priceListId === undefined ? '' : `, list ${engine.data.priceListId}`}
            </span>
          )}
          <Link href={`/inquiries/${inquiryId}`} className="btn">
            {inquiry.mayChange ? 'Change the inquiry' : 'Read the inquiry'}
          </Link>
        </>
      }
    >
      {setNames.length > 1 && (
        <section aria-label="Vessel sets" className="bg-sheet px-1 lg:px-0">
          <SetTabs
            names={setNames}
            current={set}
            onChange={setSet}
            note={arrangementText(inquiry.document.arrangement)}
          />
        </section>
      )}
      {read.ok && (
        <ConditionStrip
          conditions={conditionsOfInquiry(read.value, first?.assessment.results ?? [], set)}
          href={`/inquiries/${inquiryId}`}
        />
      )}
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-5 lg:px-6">
        {solved.data === undefined ? (
          <>
            <h1 className="mb-2">Candidates</h1>
            {solved.isError && (
              <Fault
                text={errorText(solved.error)}
                action={{ title: 'Try again', run: () => void solved.refetch() }}
              />
            )}
            {isStopped && (
              <Fault
                text="The search was stopped."
                action={{ title: 'Search again', run: () => void solved.refetch() }}
              />
            )}
            {solved.isFetching && (
              <Working
                text="Searching the whole range for systems that fit."
                onStop={() => void queries.cancelQueries({ queryKey: solvedKey(inquiry) })}
              />
            )}
          </>
        ) : (
          <CandidatesSheet
            inquiry={inquiry}
            answer={solved.data}
            engine={engine.data}
            mayTake={me.role === 'applications_engineer'}
            isBusy={take.isPending}
            trouble={take.isError ? errorText(take.error) : undefined}
            onTake={({ system }) => take.mutate(system)}
          />
        )}
      </main>
    </Page>
  );
}
