'use client';

import { useMutation } from '@tanstack/react-query';
import { errorText } from '../api/api-error';
import { api, type Inputs, type Outputs } from '../api/client';
import type { Me } from '../api/use-me';
import { Fault } from '../look/notice';
import { BlockingList } from './blocking-list';
import { Releases } from './releases';
import { ReleaseForm } from './release-form';

type OfferRecord = Outputs['offers']['get'];

/** What keeps an offer from being sent, who released what, and the approver's part in it. */
export function StandingAgainst({
  record,
  me,
  next,
  onChange,
}: {
  readonly record: OfferRecord;
  readonly me: Me;
  /** Who has the next step, in a sentence. */
  readonly next: string | undefined;
  readonly onChange: () => void;
}) {
  const release = useMutation({
    mutationFn: (input: Inputs['offers']['release']) => api.offers.release.mutate(input),
    onSuccess: onChange,
  });
  return (
    <section className="sec scroll-mt-4" id="before-sending">
      <h2>Before it can be sent</h2>
      <BlockingList sentences={record.blocking} />
      {next !== undefined && <p className="say-sm mt-1">{next}</p>}
      <Releases releases={record.releases} />
      {me.role === 'approver' &&
        record.waitsFor.map((what) => (
          <ReleaseForm
            key={what}
            what={what}
            isBusy={release.isPending}
            onRelease={(kind, note) => release.mutate({ id: record.id, what: kind, note })}
          />
        ))}
      {release.isError && <Fault text={errorText(release.error)} />}
    </section>
  );
}
