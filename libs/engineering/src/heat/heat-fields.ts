import { z } from 'zod';
import { quantity } from '../calculation.js';

const positive = (unit: string, symbol: string, description: string): z.ZodNumber =>
  quantity({ unit, symbol, description }, z.number().positive());

export const heatFields = {
  batchMassKg: positive('kg', 'M', 'Mass of the batch'),
  heatCapacityJPerKgK: positive('J/(kg.K)', 'C', 'Heat capacity of the batch'),
  overallCoefficientWPerM2K: positive('W/(m2.K)', 'U', 'Overall heat transfer coefficient'),
  areaM2: positive('m2', 'A', 'Heat transfer area'),
  startTemperatureK: positive('K', 'T1', 'Batch temperature at the start'),
  endTemperatureK: positive('K', 'T2', 'Batch temperature at the end'),
  mediumTemperatureK: positive('K', 'T_m', 'Temperature of the medium, constant'),
  mediumInletTemperatureK: positive('K', 'T_in', 'Inlet temperature of the medium'),
  mediumFlowKgPerS: positive('kg/s', 'W', 'Mass flow of the medium'),
  mediumHeatCapacityJPerKgK: positive('J/(kg.K)', 'c', 'Heat capacity of the medium'),
  timeS: quantity({ unit: 's', symbol: 't', description: 'Time' }),
  positive,
} as const;
