import { router } from '../../trpc/procedures.js';
import { listClients } from './list-clients.js';

export const clientsRouter = router({ list: listClients });
