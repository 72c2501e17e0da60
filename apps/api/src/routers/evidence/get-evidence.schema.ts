import { assessmentSchema } from '@flangewise/model';
import { z } from 'zod';
import { id } from '../as-typed.js';

export const getEvidenceInput = z.object({ systemId: id });

export const getEvidenceOutput = assessmentSchema;
