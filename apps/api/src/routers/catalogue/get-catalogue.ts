import { catalogueFor } from '../../catalogue/catalogue-for.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { getCatalogueOutput } from './get-catalogue.schema.js';

/** The range in force; with list prices for the maker's own people. */
export const getCatalogue = signedInProcedure
  .output(getCatalogueOutput)
  .query(({ ctx }) => catalogueFor(ctx.workshop, ctx.person));
