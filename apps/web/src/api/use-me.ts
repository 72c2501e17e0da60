import { useQuery } from '@tanstack/react-query';
import { api, type Outputs } from './client';

/** Key of the answer to who is signed in: null for nobody. */
export const meKey = 'me';

export type Me = NonNullable<Outputs['session']['me']>;

/** Who is signed in; undefined until it is known. */
export function useMe(): Me | undefined {
  const { data } = useQuery({
    queryKey: [meKey],
    queryFn: () => api.session.me.query(),
    staleTime: Number.POSITIVE_INFINITY,
  });
  return data ?? undefined;
}
