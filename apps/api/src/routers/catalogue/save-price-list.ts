import { savePriceList as keepPriceList } from '../../catalogue/save-price-list.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { savePriceListInput } from './save-price-list.schema.js';
import { changedDraft } from './seen-draft.schema.js';

export const savePriceList = keeperProcedure
  .input(savePriceListInput)
  .output(changedDraft)
  .mutation(({ ctx, input }) => keepPriceList(ctx, input));
