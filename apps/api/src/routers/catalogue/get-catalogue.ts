import { catalogueFor } from '../../catalogue/catalogue-for.js';
import { signedInProcedure } from '../../trpc/procedures.js';
import { getCatalogueInput, getCatalogueOutput } from './get-catalogue.schema.js';

/** The range in force, or as it was when an offer was made; with list prices for the maker's own people. */
export const getCatalogue = signedInProcedure
  .input(getCatalogueInput)
  .output(getCatalogueOutput)
  .query(async ({ ctx: { workshop, workshops, person }, input: { revision, ...wish } = {} }) =>
    catalogueFor(revision === undefined ? workshop : await workshops.named(revision), person, wish),
  );
