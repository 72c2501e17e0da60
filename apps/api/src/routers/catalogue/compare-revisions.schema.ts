import { z } from 'zod';
import type { Comparison } from '../../catalogue/compare-revisions.js';
import { id, madeHere } from '../as-typed.js';

/** Ids of two revisions or drafts: what the second has otherwise than the first. */
export const compareRevisionsInput = z.object({ from: id, to: id });

export const compareRevisionsOutput = madeHere<Comparison>();
