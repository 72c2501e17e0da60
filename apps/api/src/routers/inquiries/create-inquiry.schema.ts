import { inquirySchema } from '@flangewise/model';
import { z } from 'zod';
import { asTyped } from '../as-typed.js';

export const createInquiryInput = z.object({ document: asTyped(inquirySchema) });

export const createInquiryOutput = z.object({ id: z.string(), number: z.string() });
