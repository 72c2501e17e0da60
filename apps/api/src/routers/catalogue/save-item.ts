import { saveItem as keepItem } from '../../catalogue/save-item.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { saveItemInput } from './save-item.schema.js';
import { changedDraft } from './seen-draft.schema.js';

export const saveItem = keeperProcedure
  .input(saveItemInput)
  .output(changedDraft)
  .mutation(({ ctx, input }) => keepItem(ctx, input));
