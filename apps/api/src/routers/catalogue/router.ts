import { router } from '../../trpc/procedures.js';
import { getCatalogue } from './get-catalogue.js';

export const catalogueRouter = router({ get: getCatalogue });
