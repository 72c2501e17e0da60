import { z } from 'zod';
import { id } from '../as-typed.js';
import { systemRevision } from './system-revision.schema.js';

export const freezeSystemInput = z.object({ id });

export const freezeSystemOutput = systemRevision;
