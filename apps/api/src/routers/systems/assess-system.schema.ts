import { assessmentSchema, systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped } from '../as-typed.js';

export const assessSystemInput = z.object({ system: asTyped(systemSchema) });

export const assessSystemOutput = assessmentSchema;
