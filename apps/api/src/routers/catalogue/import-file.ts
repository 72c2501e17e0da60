import { importFile as takeIn } from '../../catalogue/import-file.js';
import { keeperProcedure } from '../../trpc/procedures.js';
import { importFileInput, importFileOutput } from './import-file.schema.js';

export const importFile = keeperProcedure
  .input(importFileInput)
  .output(importFileOutput)
  .mutation(({ ctx, input: { contentBase64: content, ...asked } }) => takeIn(ctx, { ...asked, content }));
