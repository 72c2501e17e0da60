import { removeItem as takeOut } from '../../catalogue/remove-item.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { removeItemInput } from './remove-item.schema.js';
import { changedDraft } from './seen-draft.schema.js';

export const removeItem = keeperProcedure
  .input(removeItemInput)
  .output(changedDraft)
  .mutation(({ ctx, input }) => takeOut(ctx, input));
