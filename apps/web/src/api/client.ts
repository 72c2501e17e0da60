import { createTRPCClient, httpBatchLink } from '@trpc/client';
import type { AppRouter } from '@flangewise/api';

/** Calls the procedures of the API, from the browser, with the cookie of whoever is signed in. */
export const api = createTRPCClient<AppRouter>({ links: [httpBatchLink({ url: '/api/trpc' })] });
