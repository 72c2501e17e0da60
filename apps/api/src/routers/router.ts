import { router } from '../trpc/procedures.js';
import { calculationsRouter } from './calculations/router.js';
import { catalogueRouter } from './catalogue/router.js';
import { clientsRouter } from './clients/router.js';
import { evidenceRouter } from './evidence/router.js';
import { healthRouter } from './health/router.js';
import { inquiriesRouter } from './inquiries/router.js';
import { offersRouter } from './offers/router.js';
import { sessionRouter } from './session/router.js';
import { systemsRouter } from './systems/router.js';

export const appRouter = router({
  calculations: calculationsRouter,
  catalogue: catalogueRouter,
  clients: clientsRouter,
  evidence: evidenceRouter,
  health: healthRouter,
  inquiries: inquiriesRouter,
  offers: offersRouter,
  session: sessionRouter,
  systems: systemsRouter,
});

export type AppRouter = typeof appRouter;
