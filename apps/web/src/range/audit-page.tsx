'use client';

import type { AuditAnswer, Item } from '@flangewise/model';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import Link from 'next/link';
import { useState } from 'react';
import { api } from '../api/client';
import { errorText } from '../api/api-error';
import { Fault } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { Working } from '../look/working';
import { type FrameContent, RevisionFrame } from './revision-frame';
import { deskKey, type RevisionHead } from './use-revision';

/** Between two looks at how far the audit is [ms]. */
const lookAgainAfter = 1000;

const doingText = { rules: 'Rules looked at', inquiries: 'Inquiries asked' } as const;

/** The audit of a revision: begun when somebody asks, stopped when nobody waits any more. */
function useAudit({ id, version }: RevisionHead) {
  const queries = useQueryClient();
  const [isAsked, setAsked] = useState(false);
  const queryKey = [deskKey, 'audit', id, version];
  const known = queries.getQueryData<AuditAnswer>(queryKey);
  const answer = useQuery({
    queryKey,
    queryFn: ({ signal }) => api.catalogue.audit.query({ id }, { signal }),
    enabled: isAsked,
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
  const isRunning = isAsked && answer.isFetching;
  const progress = useQuery({
    queryKey: [deskKey, 'audit progress', id],
    queryFn: async () => (await api.catalogue.auditProgress.query({ id })).progress,
    enabled: isRunning,
    refetchInterval: lookAgainAfter,
    gcTime: 0,
  });
  return {
    answer: answer.data ?? known,
    error: answer.error,
    isRunning,
    progress: isRunning && progress.data != null && progress.data.of > 0 ? progress.data : undefined,
    begin: () => {
      setAsked(true);
      if (answer.isError) void answer.refetch();
    },
    stop: () => {
      setAsked(false);
      void queries.cancelQueries({ queryKey });
    },
  };
}

interface FoundProps {
  readonly title: string;
  readonly count: number;
  readonly says: string;
  readonly none: string;
  readonly children: React.ReactNode;
}

function Found({ title, count, says, none, children }: FoundProps) {
  return (
    <section className="sec">
      <div className="sec-head">
        <h2>
          <StatusMark
            status={count === 0 ? 'met' : 'met with caution'}
            label={count === 0 ? 'none' : 'found'}
          />{' '}
          {title}
        </h2>
        <span className="lab">{count}</span>
      </div>
      <p className="say-sm mb-1 max-w-[76ch]">{count === 0 ? none : says}</p>
      <ul>{children}</ul>
    </section>
  );
}

function Answer({ answer, id }: { readonly answer: AuditAnswer; readonly id: string }) {
  const { deadItems, redundantRules, gaps, items, rules, ruleRevision } = answer;
  return (
    <div className="grid gap-6">
      <p className="text-ink2">
        {items} items held against {rules} rules, {ruleRevision}.
      </p>
      <Found
        title="Items that nobody can ever buy"
        count={deadItems.length}
        says="Whatever a client asks, no whole system has these. Mend what keeps them out, or set their life to discontinued."
        none="Every item is part of some whole system."
      >
        {deadItems.map(({ item, reason }: { readonly item: Item['id']; readonly reason: string }) => (
          <li key={item} className="row grid gap-x-4 py-2 sm:grid-cols-[72px_minmax(0,1fr)]">
            <Link href={`/range/revisions/${id}#${item}`} className="font-semibold">
              {item}
            </Link>
            <span className="say-sm">{reason}</span>
          </li>
        ))}
      </Found>
      <Found
        title="Inquiries that find nothing"
        count={gaps.length}
        says="Sensible inquiries, asked by construction, batch, pressure and temperature, for which the range has no system."
        none="Every sensible inquiry that was asked finds a system."
      >
        {gaps.map((gap) => (
          <li key={gap} className="row say-sm py-1.5 first-letter:uppercase">
            {gap}
          </li>
        ))}
      </Found>
      <Found
        title="Rules that change no answer"
        count={redundantRules.length}
        says="With this range they refuse nothing that others let through. A rule of safety stays all the same: another range may need it."
        none="Every rule decides something about this range."
      >
        {redundantRules.map((text) => (
          <li key={text} className="row say-sm py-1.5">
            {text}
          </li>
        ))}
      </Found>
    </div>
  );
}

function Audit({ revision }: FrameContent) {
  const { answer, error, isRunning, progress, begin, stop } = useAudit(revision);
  return (
    <div className="grid gap-5">
      {answer === undefined && !isRunning && (
        <div className="grid justify-items-start gap-3">
          <p className="say max-w-[70ch]">
            The engine looks for items that no whole system can have, for rules that never decide, and for
            sensible inquiries that find nothing. It takes a minute or two, and can be stopped.
          </p>
          {error !== null && <Fault text={errorText(error)} />}
          <button type="button" className="btn btn-ink" onClick={begin}>
            Begin the audit
          </button>
        </div>
      )}
      {isRunning && (
        <Working
          text={
            progress === undefined
              ? 'Getting the rules ready.'
              : `${doingText[progress.doing]}: ${String(progress.done)} of ${String(progress.of)}.`
          }
          share={progress === undefined ? undefined : progress.done / progress.of}
          onStop={stop}
        />
      )}
      {answer !== undefined && <Answer answer={answer} id={revision.id} />}
    </div>
  );
}

/** A revision looked at as a whole by the engine. */
export function AuditPage({ id }: { readonly id: string }) {
  return (
    <RevisionFrame id={id} sheet="Audit">
      {(content) => <Audit {...content} />}
    </RevisionFrame>
  );
}
