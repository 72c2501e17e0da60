'use client';

import type { InquiryInput } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import { errorText } from '../api/api-error';
import { api } from '../api/client';
import { Fault } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { Working } from '../look/working';
import { openDocument } from './open-document';

/** Nothing in the range answers the inquiry: what cannot hold together, and the smallest changes that mend it. */
export function NothingFits({
  inquiryId,
  document,
}: {
  readonly inquiryId: string;
  readonly document: InquiryInput;
}) {
  const { data, error, isError } = useQuery({
    queryKey: ['conflict', inquiryId, document],
    queryFn: () => api.systems.explain.mutate({ system: openDocument(document) }),
    staleTime: Number.POSITIVE_INFINITY,
  });
  if (isError) return <Fault text={errorText(error)} />;
  if (data === undefined) return <Working text="Looking for what cannot hold together." />;
  return (
    <div className="grid gap-6">
      {data.conflicts.map(({ text, statements, rules }) => (
        <section key={text} className="sec">
          <h2 className="font-semibold">
            <StatusMark status="not met" /> What cannot hold together
          </h2>
          <p className="say my-1">{text}</p>
          <ul className="mb-2 flex flex-wrap gap-2">
            {statements.map((statement) => (
              <li key={statement.path} className="chip border-given text-given">
                {statement.text}
              </li>
            ))}
          </ul>
          <ul>
            {rules.map((rule) => (
              <li key={rule.id + rule.text} className="row py-1.5">
                <span className="font-medium">{rule.title}</span>{' '}
                <span className="say-sm block">{rule.text}</span>
              </li>
            ))}
          </ul>
        </section>
      ))}
      <section className="sec">
        <h2 className="font-semibold">Smallest changes that mend it</h2>
        <ul>
          {data.repairs.map(({ text }) => (
            <li key={text} className="row say py-2">
              {text}
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}
