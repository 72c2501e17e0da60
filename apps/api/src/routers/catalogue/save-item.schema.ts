import { itemSchema } from '@flangewise/model';
import { asTyped } from '../as-typed.js';
import { seenDraft } from './seen-draft.schema.js';

export const saveItemInput = seenDraft.extend({ item: asTyped(itemSchema) });
