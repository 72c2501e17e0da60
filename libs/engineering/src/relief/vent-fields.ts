import { z } from 'zod';
import { quantity } from '../calculation.js';
import {
  compressibilityFactor,
  isentropicExponent,
  massFlowKgPerS,
  molarMassKgPerMol,
  temperatureK,
} from './relief-fields.js';

/** A gas stream in a vent line that ends in the open. */
export const ventFields = {
  massFlowKgPerS,
  temperatureK,
  molarMassKgPerMol,
  compressibilityFactor: compressibilityFactor.optional(),
  isentropicExponent,
  lineDiameterM: quantity(
    { unit: 'm', symbol: 'd', description: 'Inner diameter of the vent line' },
    z.number().positive().max(5),
  ),
  ambientPressurePaAbs: quantity(
    {
      unit: 'Pa',
      symbol: 'p_a',
      description: 'Ambient pressure; the standard atmosphere where nothing is given',
    },
    z.number().positive(),
  ).optional(),
};
