import { z } from 'zod';
import type { RevisionHead } from '../../catalogue/revision-head.js';
import { madeHere } from '../as-typed.js';

export const openDraftInput = z.strictObject({}).default({});

export const openDraftOutput = z.object({ revision: madeHere<RevisionHead>() });
