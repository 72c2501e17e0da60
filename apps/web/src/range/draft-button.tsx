'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { api } from '../api/client';
import { errorText } from '../api/api-error';
import { type RevisionHead, revisionsKey } from './use-revision';

/** Opens a draft of what is in force, or leads to the one that is open. */
export function DraftButton({ revisions }: { readonly revisions: readonly RevisionHead[] | undefined }) {
  const router = useRouter();
  const queries = useQueryClient();
  const draft = revisions?.find(({ state }) => state === 'draft');
  const open = useMutation({
    mutationFn: () => api.catalogue.openDraft.mutate({}),
    onSuccess: async ({ revision }) => {
      await queries.invalidateQueries({ queryKey: revisionsKey });
      router.push(`/range/revisions/${revision.id}`);
    },
  });
  if (draft !== undefined)
    return (
      <Link className="btn btn-ink" href={`/range/revisions/${draft.id}`}>
        Go on with draft {draft.number}
      </Link>
    );
  return (
    <>
      {open.isError && <span role="alert">{errorText(open.error)}</span>}
      <button
        type="button"
        className="btn btn-ink"
        disabled={open.isPending || revisions === undefined}
        onClick={() => open.mutate()}
      >
        Open a draft
      </button>
    </>
  );
}
