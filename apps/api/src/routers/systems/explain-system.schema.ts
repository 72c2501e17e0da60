import { explainAnswerSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped } from '../as-typed.js';

export const explainSystemInput = z.object({ system: asTyped(systemSchema) });

export const explainSystemOutput = explainAnswerSchema;
