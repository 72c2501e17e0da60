'use client';

import type { Change, ExplainAnswer, InquiryInput } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { errorText } from '../api/api-error';
import { api } from '../api/client';
import { formOf } from '../inquiry/form-values';
import { proposeTrial } from '../inquiry/trial';
import { Fault } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { Working } from '../look/working';
import { withChange } from '../system/edit-system';
import { openDocument } from './open-document';

export interface NothingFitsProps {
  readonly inquiryId: string;
  readonly document: InquiryInput;
  readonly mayChange: boolean;
}

type Conflict = ExplainAnswer['conflicts'][number];

function ConflictSection({ conflict }: { readonly conflict: Conflict }) {
  return (
    <section className="sec">
      <h2>
        <StatusMark status="not met" /> These exclude each other
      </h2>
      <ul className="mt-1.5 mb-2 flex flex-wrap gap-2">
        {conflict.statements.map(({ path, text }) => (
          <li key={path + text} className="chip given border-given! bg-sheet">
            {text}
          </li>
        ))}
      </ul>
      <ul className="mt-2">
        {conflict.rules.map((rule) => (
          <li key={rule.id + rule.text} className="row py-1.5">
            <span className="font-medium">{rule.title}</span>
            <span className="say-sm block">{rule.text}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Nothing in the range answers the inquiry: what cannot hold together, and the smallest changes that mend it. */
export function NothingFits({ inquiryId, document, mayChange }: NothingFitsProps) {
  const router = useRouter();
  const { data, error, isError } = useQuery({
    queryKey: ['conflict', inquiryId, document],
    queryFn: ({ signal }) => api.systems.explain.mutate({ system: openDocument(document) }, { signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (isError) return <Fault text={errorText(error)} />;
  if (data === undefined) return <Working text="Looking for the reason." />;
  /** The form shows the changed inquiry and keeps nothing of it: the client has to agree first. */
  const tryIt = (repair: Change): void => {
    proposeTrial(inquiryId, {
      values: formOf(withChange(openDocument(document), repair, data).inquiry),
      text: repair.text,
    });
    router.push(`/inquiries/${inquiryId}`);
  };
  return (
    <div className="grid max-w-[720px] gap-6">
      {data.conflicts.map((conflict) => (
        <ConflictSection key={conflict.text} conflict={conflict} />
      ))}
      <section className="sec">
        <h2>
          {data.repairs.length === 1 ? 'Smallest change that mends it' : 'Smallest changes that mend it'}
        </h2>
        <ul>
          {data.repairs.map((repair) => (
            <li key={repair.text} className="row flex items-baseline justify-between gap-4 py-2">
              <span className="say first-letter:uppercase">{repair.text}</span>
              {mayChange && (
                <button type="button" className="btn btn-sm" onClick={() => tryIt(repair)}>
                  Try
                </button>
              )}
            </li>
          ))}
        </ul>
        {mayChange && (
          <p className="lab mt-1">
            “Try” shows the change in the fields of the inquiry; nothing of it is kept until you say so there.
          </p>
        )}
      </section>
    </div>
  );
}
