import { auditAnswerSchema } from '@flangewise/model';
import { z } from 'zod';
import { id } from '../as-typed.js';

export const auditRevisionInput = z.object({ id });

export const auditRevisionOutput = auditAnswerSchema;
