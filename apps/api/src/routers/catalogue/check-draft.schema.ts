import { z } from 'zod';
import type { DraftCheck } from '../../catalogue/check-draft.js';
import { id, madeHere } from '../as-typed.js';

export const checkDraftInput = z.object({ id });

export const checkDraftOutput = madeHere<DraftCheck>();
