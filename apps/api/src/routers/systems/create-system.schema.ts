import { systemSchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped, id } from '../as-typed.js';

export const createSystemInput = z.object({ inquiryId: id, system: asTyped(systemSchema) });

/** `name` is the letter under which the inquiry has it. */
export const createSystemOutput = z.object({ id: z.string(), name: z.string() });
