import { narrowAnswerSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped } from '../as-typed.js';

export const narrowSystemInput = z.object({ system: asTyped(systemSchema) });

export const narrowSystemOutput = narrowAnswerSchema;
