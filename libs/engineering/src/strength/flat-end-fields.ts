import { z } from 'zod';
import { quantity } from '../calculation.js';
import { length } from './pressure-fields.js';

export const flatEndDiameterField = length('d', 'Diameter that the code measures for this attachment');

export const attachmentFactorField = quantity(
  {
    unit: '1',
    symbol: 'C',
    description:
      'Attachment factor of the code: C of UG-34 (0.1 to 0.33), C1 of EN 13445-3 clause 10 (0.4 to 0.82), C of AD 2000 B5 (0.3 to 1.25)',
  },
  z.number().min(0.05).max(1.3),
);
