import { z } from 'zod';
import { seenDraft } from './seen-draft.schema.js';

export const removeItemInput = seenDraft.extend({ itemId: z.string().max(64) });
