import { type Assessment, type Item, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { id, madeHere, typedDocument } from '../as-typed.js';
import { systemRevision } from './system-revision.schema.js';

export const getSystemRevisionInput = z.object({ id, number: z.int().positive() });

export const getSystemRevisionOutput = systemRevision.extend({
  document: typedDocument(systemSchema),
  /** With evidence, by the catalogue and the rules of then. */
  assessment: madeHere<Assessment>(),
  /** The chosen items as the catalogue of then has them; null where that catalogue is not on file. */
  items: madeHere<readonly Item[] | null>(),
});
