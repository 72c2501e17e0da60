'use client';

import { useMutation } from '@tanstack/react-query';
import type { Workbench } from './workbench';

/** Fills what is still open and keeps every choice; the cheapest way for those who see prices. */
export function CompleteButton({ bench }: { readonly bench: Workbench }) {
  const { client, document, assessment, change, currency } = bench;
  const open = assessment?.undecided.length ?? 0;
  const filling = useMutation({
    mutationFn: async () => {
      const answer = await client.ask('complete', { document });
      if (!answer.ok || answer.value === undefined)
        throw new Error('Nothing fills the rest with these choices: resolve the conflict first.');
      change(answer.value);
    },
  });
  return (
    <p className="mb-4 flex flex-wrap items-center gap-3 border-l-[3px] border-open bg-open-t px-3 py-2">
      {open === 1 ? 'One slot is' : `${String(open)} slots are`} still open.
      <button
        type="button"
        className="btn btn-sm"
        disabled={filling.isPending}
        onClick={() => filling.mutate()}
      >
        Fill {open === 1 ? 'it' : 'them'}
        {currency === undefined ? '' : ' at the lowest price'}
      </button>
      {filling.isError && <span role="alert">{filling.error.message}</span>}
    </p>
  );
}
