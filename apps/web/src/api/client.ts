import { createTRPCClient, httpLink, splitLink, httpBatchLink } from '@trpc/client';
import type { inferRouterInputs, inferRouterOutputs } from '@trpc/server';
import type { AppRouter } from '@flangewise/api';

const url = '/api/trpc';

/** Procedures that take their time: they travel alone, so that quick ones do not wait for them. */
const slow = new Set([
  'systems.solve',
  'systems.explain',
  'offers.create',
  'catalogue.get',
  'catalogue.getRevision',
  'catalogue.compare',
  'catalogue.audit',
  'catalogue.checkDraft',
  'catalogue.importFile',
  'catalogue.release',
]);

/** Calls the procedures of the API, from the browser, with the cookie of whoever is signed in. */
export const api = createTRPCClient<AppRouter>({
  links: [
    splitLink({
      condition: ({ path }) => slow.has(path),
      true: httpLink({ url }),
      false: httpBatchLink({ url, maxURLLength: 8000 }),
    }),
  ],
});

export type Inputs = inferRouterInputs<AppRouter>;
export type Outputs = inferRouterOutputs<AppRouter>;
