import { findClients } from '../../clients/find-clients.js';
import { houseProcedure } from '../../trpc/procedures.js';
import { listClientsOutput } from './list-clients.schema.js';

export const listClients = houseProcedure.output(listClientsOutput).query(({ ctx }) => findClients(ctx));
