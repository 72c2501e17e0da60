import type { SystemInput } from '@flangewise/model';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useRef } from 'react';
import { api } from '../api/client';
import { keep } from './kept-changes';

/**
 * Saves a system that answers an inquiry under the next letter, and opens it there.
 *
 * @param shown what stands on the page, where that can be changed while it is being saved: it goes along and is saved there
 */
export function useKeep(inquiryId: string, shown?: SystemInput) {
  const queries = useQueryClient();
  const router = useRouter();
  const latest = useRef(shown);
  latest.current = shown;
  return useMutation({
    mutationFn: (system: SystemInput) => api.systems.create.mutate({ inquiryId, system }),
    onSuccess: async ({ id }, saved) => {
      await queries.invalidateQueries({ queryKey: ['inquiry', inquiryId] });
      const document = latest.current;
      if (document !== undefined && document !== saved)
        keep(id, { document, version: 1, changes: 1, since: new Date().toISOString() });
      router.push(`/systems/${id}`);
    },
  });
}
