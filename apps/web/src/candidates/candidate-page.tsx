'use client';

import { useMemo } from 'react';
import { useInquiry } from '../api/use-inquiry';
import { useMe } from '../api/use-me';
import { useEngine } from '../engine/use-engine';
import { Empty } from '../look/notice';
import { Loading } from '../shell/loading';
import { Page } from '../shell/page';
import type { OpenedSystem } from '../system/use-system';
import { Workspace } from '../system/workspace';
import { useSolved } from './use-solved';

/** A candidate opened to be checked and changed; it is saved only when that is asked for. */
export function CandidatePage({ inquiryId, name }: { readonly inquiryId: string; readonly name: string }) {
  const me = useMe();
  const { inquiry, job, links, query } = useInquiry(inquiryId);
  const engine = useEngine(inquiry && { inquiry: inquiry.document });
  const solved = useSolved(inquiry);
  const candidate = solved.data?.candidates.find((one) => one.name === name);
  const system = useMemo(
    (): OpenedSystem | undefined =>
      candidate && {
        id: undefined,
        name,
        document: candidate.system,
        version: 0,
        updatedAt: '',
        revisions: [],
      },
    [candidate, name],
  );
  const failed = [query, engine, solved].find(({ isError }) => isError);
  if (me === undefined || inquiry === undefined || engine.data === undefined || solved.data === undefined)
    return <Loading sheet="System" what="the candidate and the range" query={failed ?? query} />;
  if (system === undefined)
    return (
      <Page title={`Candidate ${name}`} sheet="Candidates" links={links} job={job}>
        <main id="main" className="mx-auto max-w-[1440px] px-4 py-6 lg:px-6">
          <h1>No candidate {name}</h1>
          <Empty text="The search finds no candidate of this letter: the inquiry, the range or the rules have changed.">
            <a href={`/inquiries/${inquiryId}/candidates`} className="btn">
              See the candidates
            </a>
          </Empty>
        </main>
      </Page>
    );
  return <Workspace me={me} system={system} inquiry={inquiry} job={job} links={links} engine={engine.data} />;
}
