import { z } from 'zod';
import { quantity } from '../calculation.js';

/** Fields that several stirring calculations share: one name, one unit, one range each. */

export const impellerDiameterM = quantity(
  { unit: 'm', symbol: 'D', description: 'Diameter of the impeller' },
  z.number().positive().max(10),
);

export const vesselDiameterM = quantity(
  { unit: 'm', symbol: 'T', description: 'Inner diameter of the vessel' },
  z.number().positive().max(20),
);

export const speedPerS = quantity(
  { unit: '1/s', symbol: 'N', description: 'Speed of rotation' },
  z.number().positive().max(1000),
);

export const densityKgPerM3 = quantity(
  { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the liquid' },
  z.number().positive().max(25_000),
);

export const viscosityPaS = quantity(
  { unit: 'Pa.s', symbol: 'μ', description: 'Dynamic viscosity' },
  z.number().positive().max(1e6),
);

export const powerNumberField = quantity(
  { unit: '1', symbol: 'Np', description: 'Power number P/(ρ N³ D⁵)' },
  z.number().min(0),
);

export const reynoldsOutput = quantity({
  unit: '1',
  symbol: 'Re',
  description: 'Reynolds number of the impeller',
});

export const powerOutput = quantity({ unit: 'W', symbol: 'P', description: 'Power taken up by the liquid' });

export const torqueOutput = quantity({ unit: 'N.m', symbol: 'M', description: 'Torque on the shaft' });
