import { router } from '../trpc/procedures.js';
import { healthRouter } from './health/router.js';
import { sessionRouter } from './session/router.js';

export const appRouter = router({
  health: healthRouter,
  session: sessionRouter,
});

export type AppRouter = typeof appRouter;
