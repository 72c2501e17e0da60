'use client';

import { QueryCache, QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { isOffline, reasonOf } from './api-error';
import { meKey } from './use-me';

/** Whoever is not signed in is asked to, and comes back to where they were. */
function askToSignIn(): void {
  if (location.pathname === '/sign-in') return;
  location.assign(`/sign-in?to=${encodeURIComponent(location.pathname)}`);
}

const createClient = (): QueryClient =>
  new QueryClient({
    queryCache: new QueryCache({
      onError: (error) => {
        if (reasonOf(error) === 'SIGN_IN_REQUIRED') askToSignIn();
      },
      onSuccess: (data, { queryKey }) => {
        if (queryKey[0] === meKey && data === null) askToSignIn();
      },
    }),
    defaultOptions: {
      queries: {
        staleTime: 5_000,
        retry: (count, error) => isOffline(error) && count < 2,
        networkMode: 'always',
      },
      mutations: { networkMode: 'always' },
    },
  });

/** One cache of answers for all pages. */
export function QueryProvider({ children }: { readonly children: ReactNode }) {
  const [client] = useState(createClient);
  return <QueryClientProvider client={client}>{children}</QueryClientProvider>;
}
