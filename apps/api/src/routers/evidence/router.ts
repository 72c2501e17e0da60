import { router } from '../../trpc/procedures.js';
import { getEvidence } from './get-evidence.js';

export const evidenceRouter = router({ get: getEvidence });
