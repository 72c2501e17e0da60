import type { SystemInput } from '@flangewise/model';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { api } from '../api/client';

/** Saves a system that answers an inquiry under the next letter, and opens it there. */
export function useKeep(inquiryId: string) {
  const queries = useQueryClient();
  const router = useRouter();
  return useMutation({
    mutationFn: (system: SystemInput) => api.systems.create.mutate({ inquiryId, system }),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: ['inquiry', inquiryId] });
      router.push(`/systems/${id}`);
    },
  });
}
