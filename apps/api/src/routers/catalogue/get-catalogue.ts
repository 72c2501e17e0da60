import { catalogueFor } from '../../catalogue/catalogue-for.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { getCatalogueInput, getCatalogueOutput } from './get-catalogue.schema.js';

/** The range in force; with list prices for the maker's own people. */
export const getCatalogue = signedInProcedure
  .input(getCatalogueInput)
  .output(getCatalogueOutput)
  .query(({ ctx, input }) => catalogueFor(ctx.workshop, ctx.person, input ?? {}));
