import { z } from 'zod';
import { quantity } from '../calculation.js';
import {
  compressibilityFactor,
  dischargeCoefficient,
  isentropicExponent,
  molarMassKgPerMol,
  temperatureK,
} from './relief-fields.js';

/** The device and the state at which it relieves. */
export const deviceFields = {
  relievingPressurePaAbs: quantity(
    { unit: 'Pa', symbol: 'p_1', description: 'Absolute pressure in the vessel while it relieves' },
    z.number().positive(),
  ),
  backPressurePaAbs: quantity(
    {
      unit: 'Pa',
      symbol: 'p_2',
      description: 'Absolute back pressure; the standard atmosphere where nothing is given',
    },
    z.number().min(0),
  ).optional(),
  dischargeCoefficient: dischargeCoefficient.optional(),
};

export const relievingTemperatureField = temperatureK.meta({
  symbol: 'T_1',
  description:
    'Temperature in the vessel while it relieves; needed where liquid boils, else that of the gas supply unless given',
});

/** A gas supply whose regulator has failed wide open. */
export const gasSupplyFields = {
  supplyPressurePaAbs: quantity(
    { unit: 'Pa', symbol: 'p_s', description: 'Highest supply pressure in front of the regulator, absolute' },
    z.number().positive(),
  ),
  flowCoefficientKv: quantity(
    { unit: 'm3/h', symbol: 'K_v', description: 'Flow coefficient of the regulator wide open' },
    z.number().min(0),
  ),
  pressureDropRatioFactor: quantity(
    { unit: '1', symbol: 'x_T', description: 'Pressure drop ratio factor of the regulator' },
    z.number().positive().max(1),
  ),
  gasTemperatureK: temperatureK.meta({ symbol: 'T_g', description: 'Temperature of the gas supply' }),
  gasMolarMassKgPerMol: molarMassKgPerMol.meta({ symbol: 'M_g', description: 'Molar mass of the gas' }),
  gasIsentropicExponent: isentropicExponent.meta({
    symbol: 'k_g',
    description: 'Isentropic exponent of the gas',
  }),
  gasCompressibilityFactor: compressibilityFactor.meta({
    symbol: 'Z_g',
    description: 'Compressibility factor of the gas at the device',
  }),
};
