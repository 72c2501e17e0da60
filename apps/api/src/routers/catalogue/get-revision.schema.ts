import { z } from 'zod';
import type { FoundRevision } from '../../catalogue/get-revision.js';
import { id, madeHere } from '../as-typed.js';

export const getRevisionInput = z.object({ id });

export const getRevisionOutput = z.object({ revision: madeHere<FoundRevision>() });
