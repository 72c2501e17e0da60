import { z } from 'zod';
import type { RevisionHead } from '../../catalogue/revision-head.js';
import { madeHere } from '../as-typed.js';

export const listRevisionsOutput = z.object({ revisions: madeHere<readonly RevisionHead[]>() });
