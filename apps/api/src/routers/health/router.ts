import { router } from '../../trpc/procedures.js';
import { getHealth } from './get-health.js';

export const healthRouter = router({ get: getHealth });
