import type { SystemInput } from '@flangewise/model';
import { useQuery } from '@tanstack/react-query';
import type { Engine } from '../engine/use-engine';
import type { SystemView } from '../engine/protocol';

/** What the engine of this page says of a candidate; undefined until it is there. */
export function useCandidateView(
  engine: Engine | undefined,
  document: SystemInput | undefined,
): SystemView | undefined {
  const { data } = useQuery({
    queryKey: ['candidate', document],
    enabled: engine !== undefined && document !== undefined,
    queryFn: async ({ signal }) => {
      if (engine === undefined || document === undefined) return null;
      const answer = await engine.client.ask('view', { document }, signal);
      return answer.ok ? answer.value : null;
    },
    staleTime: Number.POSITIVE_INFINITY,
    structuralSharing: false,
  });
  return data ?? undefined;
}
