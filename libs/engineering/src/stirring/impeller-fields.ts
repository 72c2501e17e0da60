import { z } from 'zod';
import { quantity } from '../calculation.js';
import { impellerTypes } from './impeller-constants.js';
import { densityKgPerM3, impellerDiameterM, vesselDiameterM, viscosityPaS } from './stirring-fields.js';

/** An impeller in its vessel: type and diameters, and what differs from the usual proportions of the type. */
export const impellerFields = {
  impeller: z.enum(impellerTypes).meta({ description: 'Type of impeller' }),
  impellerDiameterM,
  vesselDiameterM,
  liquidHeightM: quantity(
    {
      unit: 'm',
      symbol: 'H',
      description: 'Height of the liquid; the vessel diameter where nothing is given',
    },
    z.number().positive().max(100),
  ).optional(),
  bladeCount: quantity(
    {
      unit: '1',
      symbol: 'n',
      description: 'Number of blades or ribbons; that of the type where nothing is given',
    },
    z.number().int().min(1).max(12),
  ).optional(),
  bladeWidthOverDiameter: quantity(
    {
      unit: '1',
      symbol: 'b/D',
      description: 'Blade width by impeller diameter; that of the type where nothing is given',
    },
    z.number().min(0.02).max(1),
  ).optional(),
  bladeAngleDeg: quantity(
    {
      unit: 'deg',
      symbol: 'θ',
      description: 'Blade angle to the plane of rotation; that of the type where nothing is given',
    },
    z.number().min(15).max(90),
  ).optional(),
  impellerHeightM: quantity(
    { unit: 'm', symbol: 'h', description: 'Height of a ribbon; its diameter where nothing is given' },
    z.number().positive().max(20),
  ).optional(),
  pitchM: quantity(
    { unit: 'm', symbol: 'p', description: 'Pitch of a ribbon; its diameter where nothing is given' },
    z.number().positive().max(20),
  ).optional(),
  baffleCount: quantity(
    {
      unit: '1',
      symbol: 'n_B',
      description: 'Number of baffles; four, the careful side for torque, where nothing is given',
    },
    z.number().int().min(0).max(12),
  ).optional(),
  baffleWidthOverVessel: quantity(
    {
      unit: '1',
      symbol: 'B_w/T',
      description: 'Baffle width by vessel diameter; a tenth where nothing is given',
    },
    z.number().min(0).max(0.25),
  ).optional(),
};

/** The liquid: Newtonian by its viscosity, or a power law by consistency and flow index. */
export const liquidFields = {
  densityKgPerM3,
  viscosityPaS: viscosityPaS.optional(),
  consistencyPaSn: quantity(
    { unit: 'Pa.s', symbol: 'K', description: 'Consistency of a power-law liquid, in Pa·sⁿ' },
    z.number().positive().max(1e6),
  ).optional(),
  flowIndex: quantity(
    { unit: '1', symbol: 'n_f', description: 'Flow index of a power-law liquid' },
    z.number().min(0.1).max(2),
  ).optional(),
};
