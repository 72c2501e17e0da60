import { z } from 'zod';
import { inputTrouble, id } from '../as-typed.js';

/** A draft as somebody saw it. */
export const seenDraft = z.object({
  draftId: id,
  /** The version that was seen when the change began. */
  version: z.int().positive(),
});

export const changedDraft = z.object({
  /** Of the draft, after the change. */
  version: z.int(),
  /** What now hinders a release that did not before. */
  troubles: z.array(inputTrouble).readonly(),
});
