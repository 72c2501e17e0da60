'use client';

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useId, useState } from 'react';
import { api } from '../api/client';
import { errorText } from '../api/api-error';
import { Fault } from '../look/notice';
import { StatusMark } from '../look/status-mark';
import { Working } from '../look/working';
import { deskKey, type RevisionHead } from './use-revision';

/** Everything that shows the range in force; it is another one after a release. */
const rangeKeys = [['range'], ['engine']] as const;

interface HindrancesProps {
  readonly hindrances: readonly string[];
}

function Hindrances({ hindrances }: HindrancesProps) {
  if (hindrances.length === 0)
    return (
      <p>
        <StatusMark status="met" label="nothing hinders it" /> Nothing hinders the release.
      </p>
    );
  return (
    <>
      <p className="mb-1">
        <StatusMark status="not met" label="hindered" />{' '}
        {hindrances.length === 1 ? 'One thing hinders' : `${String(hindrances.length)} things hinder`} the
        release:
      </p>
      <ul>
        {hindrances.map((text) => (
          <li key={text} className="row say-sm py-1.5">
            {text}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What still hinders a draft, and the word that puts it in force or away. */
export function ReleaseDraft({
  revision,
  hasChanges,
}: {
  readonly revision: RevisionHead;
  readonly hasChanges: boolean;
}) {
  const { id, version } = revision;
  const noteId = useId();
  const router = useRouter();
  const queries = useQueryClient();
  const [note, setNote] = useState('');
  const [isDiscarding, setDiscarding] = useState(false);
  const check = useQuery({
    queryKey: [deskKey, 'check', id, version],
    queryFn: () => api.catalogue.checkDraft.query({ id }),
    staleTime: 60_000,
  });
  const renew = async (): Promise<void> => {
    await queries.invalidateQueries({ queryKey: [deskKey] });
    for (const queryKey of rangeKeys) queries.removeQueries({ queryKey: [...queryKey] });
  };
  const release = useMutation({
    mutationFn: () => api.catalogue.release.mutate({ id, version, note }),
    onSuccess: renew,
  });
  const discard = useMutation({
    mutationFn: () => api.catalogue.discardDraft.mutate({ id, version }),
    onSuccess: async () => {
      await renew();
      router.push('/range/revisions');
    },
  });
  const isHindered = (check.data?.hindrances.length ?? 0) > 0;
  const lacks = !hasChanges
    ? 'There is nothing to release yet.'
    : note.trim() === ''
      ? 'Say why first; it is kept with the revision.'
      : undefined;
  const fault = release.error ?? discard.error;
  return (
    <section className="sec">
      <h2 className="mb-1">Release</h2>
      {check.isPending && <Working text="Reading the draft and trying the rules." />}
      {check.isError && <Fault text={errorText(check.error)} />}
      {check.data !== undefined && <Hindrances hindrances={check.data.hindrances} />}
      <form
        className="mt-3 grid gap-2"
        onSubmit={(event) => {
          event.preventDefault();
          release.mutate();
        }}
      >
        <label htmlFor={noteId} className="lab">
          Why this revision is made
        </label>
        <textarea
          id={noteId}
          className="field"
          rows={2}
          value={note}
          onChange={({ target }) => setNote(target.value)}
        />
        <p className="flex flex-wrap items-center gap-x-3 gap-y-2">
          <button
            type="submit"
            className="btn btn-ink"
            disabled={lacks !== undefined || isHindered || check.data === undefined || release.isPending}
            aria-describedby={lacks === undefined ? undefined : `${noteId}-lacks`}
          >
            Put it in force
          </button>
          {lacks !== undefined && (
            <span id={`${noteId}-lacks`} className="lab">
              {lacks}
            </span>
          )}
        </p>
      </form>
      {release.isPending && <Working text="Putting the draft in force." />}
      {fault !== null && (
        <div className="mt-2">
          <Fault text={errorText(fault)} />
        </div>
      )}
      <p className="mt-3 flex flex-wrap items-center gap-2">
        {isDiscarding ? (
          <>
            <span className="say-sm">
              Nothing of the draft comes in force. It can be looked at afterwards.
            </span>
            <button
              type="button"
              className="btn"
              disabled={discard.isPending}
              onClick={() => discard.mutate()}
            >
              Discard draft {revision.number}
            </button>
            <button type="button" className="btn btn-q" onClick={() => setDiscarding(false)}>
              Keep it
            </button>
          </>
        ) : (
          <button type="button" className="btn btn-sm" onClick={() => setDiscarding(true)}>
            Discard the draft
          </button>
        )}
      </p>
    </section>
  );
}
