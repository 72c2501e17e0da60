import { z } from 'zod';
import { quantity } from '../calculation.js';

export const pressureCodes = ['EN 13445-3', 'ASME VIII-1', 'AD 2000'] as const;

export type PressureCode = (typeof pressureCodes)[number];

/** The pressure vessel code whose formula is used. */
export const codeField = z.enum(pressureCodes).meta({ description: 'Pressure vessel code' });

export const pressureField = quantity(
  { unit: 'Pa', symbol: 'P', description: 'Internal pressure over external (gauge)' },
  z.number().min(0),
);

export const allowableStressField = quantity(
  { unit: 'Pa', symbol: 'f', description: 'Allowable stress of the code at the design temperature' },
  z.number().positive(),
);

export const jointEfficiencyField = quantity(
  { unit: '1', symbol: 'z', description: 'Joint efficiency, 1 without a governing weld' },
  z.number().positive().max(1),
);

export const thicknessField = quantity(
  { unit: 'm', symbol: 'e', description: 'Analysis thickness: without corrosion allowance and tolerance' },
  z.number().positive(),
);

export const requiredThicknessField = quantity({
  unit: 'm',
  symbol: 'e',
  description: 'Required thickness, without corrosion allowance and tolerance',
});

export const permissiblePressureField = quantity({
  unit: 'Pa',
  symbol: 'P',
  description: 'Permissible internal pressure (gauge)',
});

/** A length above zero. */
export const length = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive());
