import { priceListSchema } from '@flangewise/model';
import { asTyped } from '../as-typed.js';
import { seenDraft } from './seen-draft.schema.js';

export const savePriceListInput = seenDraft.extend({ priceList: asTyped(priceListSchema) });
