import { z } from 'zod';
import { quantity } from '../calculation.js';
import { handCouplings } from './lifting-multipliers.js';

/** Fields of a lift that both calculations share. */

export const horizontalField = quantity(
  { unit: 'm', symbol: 'H', description: 'Hands in front of the ankles' },
  z.number().positive().max(3),
);

export const verticalField = quantity(
  { unit: 'm', symbol: 'V', description: 'Hands above the floor at the start' },
  z.number().min(0).max(3),
);

export const travelField = quantity(
  { unit: 'm', symbol: 'D', description: 'Height through which the load moves' },
  z.number().min(0).max(3),
);

export const asymmetryField = quantity(
  { unit: 'deg', symbol: 'A', description: 'Turn of the body' },
  z.number().min(0).max(180),
);

export const couplingField = z.enum(handCouplings).meta({ description: 'How well the hands hold the load' });
