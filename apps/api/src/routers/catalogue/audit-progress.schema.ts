import type { AuditProgress } from '@flangewise/constraints';
import { z } from 'zod';
import { id, madeHere } from '../as-typed.js';

export const auditProgressInput = z.object({ id });

export const auditProgressOutput = z.object({ progress: madeHere<AuditProgress | null>() });
