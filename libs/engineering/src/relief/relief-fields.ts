import { z } from 'zod';
import { quantity } from '../calculation.js';

/** Fields that several relief calculations share: one name, one unit, one range each. */

export const isentropicExponent = quantity(
  { unit: '1', symbol: 'k', description: 'Isentropic exponent (ratio of heat capacities for an ideal gas)' },
  z.number().min(1).max(2),
);

export const temperatureK = quantity(
  { unit: 'K', symbol: 'T', description: 'Temperature of the fluid at the inlet' },
  z.number().positive().max(3000),
);

export const molarMassKgPerMol = quantity(
  { unit: 'kg/mol', symbol: 'M', description: 'Molar mass' },
  z.number().min(0.001).max(1),
);

export const compressibilityFactor = quantity(
  { unit: '1', symbol: 'Z', description: 'Compressibility factor at the inlet' },
  z.number().min(0.1).max(3),
);

export const massFlowKgPerS = quantity(
  { unit: 'kg/s', symbol: 'W', description: 'Mass flow to be relieved' },
  z.number().min(0),
);

export const dischargeCoefficient = quantity(
  { unit: '1', symbol: 'K_d', description: 'Coefficient of discharge of the device' },
  z.number().positive().max(1),
);

export const inletPressurePaAbs = quantity(
  {
    unit: 'Pa',
    symbol: 'p_1',
    description: 'Absolute pressure at the inlet of the device (set pressure, overpressure and atmosphere)',
  },
  z.number().positive(),
);

export const backPressurePaAbs = quantity(
  {
    unit: 'Pa',
    symbol: 'p_2',
    description: 'Absolute back pressure; the standard atmosphere where nothing is given',
  },
  z.number().min(0),
);

export const areaM2 = quantity({ unit: 'm2', symbol: 'A', description: 'Required flow area' });

export const backPressureCorrection = quantity(
  {
    unit: '1',
    symbol: 'K_b',
    description: 'Back-pressure correction of a balanced valve; 1 where nothing is given',
  },
  z.number().positive().max(1),
);

export const combinationFactor = quantity(
  {
    unit: '1',
    symbol: 'K_c',
    description:
      'Factor of a bursting disc upstream of the valve: 0.9 uncertified, 1 without disc (where nothing is given)',
  },
  z.number().positive().max(1),
);

export const drainage = z.enum(['adequate', 'inadequate']).meta({
  description: 'Whether drainage and fire fighting are prompt and adequate',
});

export const wettedAreaM2 = quantity(
  { unit: 'm2', symbol: 'A', description: 'Wetted wall up to 7.6 m above the source of flame' },
  z.number().min(0).max(1e4),
);

export const environmentFactor = quantity(
  {
    unit: '1',
    symbol: 'F',
    description:
      'Environment factor: 1 bare vessel, 0.03 earth-covered; insulation only where it withstands fire and jets',
  },
  z.number().positive().max(1),
);

/** Coefficient of a bursting disc that discharges to the atmosphere through a short line. */
export const discCoefficient = 0.62;
