'use client';

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { errorText } from '../api/api-error';
import { api, type Inputs } from '../api/client';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { useEngine } from '../engine/use-engine';
import { Fault } from '../look/notice';
import { Working } from '../look/working';
import { Loading } from '../shell/loading';
import { Page } from '../shell/page';
import { CandidateTable } from './candidate-table';
import { NothingFits } from './nothing-fits';
import { PairedChart } from './paired-chart';
import { WhatFollows } from './what-follows';
import { WhyNotOthers } from './why-not-others';

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
  count === 1 ? 'One system fits' : `${words[count] ?? String(count)} systems fit`;

/** Systems that answer an inquiry, ranked, with the reasons against the others. */
export function CandidatesPage({ inquiryId }: { readonly inquiryId: string }) {
  const me = useMe();
  const router = useRouter();
  const client = useQueryClient();
  const { inquiry, job, links, query } = useInquiry(inquiryId);
  const engine = useEngine();
  const solved = useQuery({
    queryKey: ['solve', inquiryId, inquiry?.document],
    enabled: inquiry !== undefined,
    queryFn: () => api.systems.solve.query({ inquiryId }),
    staleTime: Number.POSITIVE_INFINITY,
  });
  const take = useMutation({
    mutationFn: (input: Inputs['systems']['create']) => api.systems.create.mutate(input),
    onSuccess: async ({ id }) => {
      await client.invalidateQueries({ queryKey: ['inquiry', inquiryId] });
      router.push(`/systems/${id}`);
    },
  });
  if (inquiry === undefined || me === undefined)
    return <Loading sheet="Candidates" what="the inquiry" query={query} />;
  const answer = solved.data;
  const mayTake = me.role === 'applications_engineer';
  const actions = (
    <Link href={`/inquiries/${inquiryId}`} className="btn">
      Change the inquiry
    </Link>
  );
  return (
    <Page title="Candidates" sheet="Candidates" job={job} links={links} actions={actions}>
      <main id="main" className="mx-auto max-w-[1440px] px-4 py-5 lg:px-6">
        {answer === undefined ? (
          <>
            <h1 className="text-heading font-semibold">Candidates</h1>
            {solved.isError ? (
              <Fault
                text={errorText(solved.error)}
                action={{ title: 'Try again', run: () => void solved.refetch() }}
              />
            ) : (
              <Working text="Looking for systems that fit. Every rule is held against the whole range." />
            )}
          </>
        ) : (
          <div className="grid gap-6 lg:grid-cols-[minmax(0,2fr)_minmax(0,1fr)]">
            <div className="min-w-0">
              <h1 className="text-heading font-semibold">
                {answer.candidates.length === 0
                  ? 'Nothing in the range fits'
                  : headline(answer.candidates.length)}
              </h1>
              {answer.result === 'not proved' && <p className="say">The search was stopped; more may fit.</p>}
              {answer.candidates.length === 0 ? (
                <NothingFits inquiryId={inquiryId} document={inquiry.document} />
              ) : (
                <>
                  {answer.candidates.length > 1 &&
                    answer.candidates.every(({ price }) => price !== undefined) && (
                      <div className="pane mt-3 p-3 max-md:hidden">
                        <p className="say-sm mb-1">
                          Lower is cheaper, further right is better, in both panels.
                        </p>
                        <PairedChart candidates={answer.candidates} />
                      </div>
                    )}
                  <div className="mt-4">
                    <CandidateTable
                      candidates={answer.candidates}
                      engine={engine.data}
                      inquiryId={inquiryId}
                      currency={engine.data?.currency ?? 'EUR'}
                      mayTake={mayTake}
                      isBusy={take.isPending}
                      onTake={({ system }) => take.mutate({ inquiryId, system })}
                    />
                  </div>
                  {take.isError && <Fault text={errorText(take.error)} />}
                </>
              )}
            </div>
            <aside className="grid min-w-0 content-start gap-6">
              <WhyNotOthers refusals={answer.refusals} />
              <WhatFollows answer={answer} />
            </aside>
          </div>
        )}
      </main>
    </Page>
  );
}
