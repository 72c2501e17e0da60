import type { Calculation } from '../calculation.js';
import { coolingWater } from './cooling-water.js';
import { electricalLoad } from './electrical-load.js';
import { floorLoad } from './floor-load.js';
import { gasConsumption } from './gas-consumption.js';
import { roomHeat } from './room-heat.js';

/** What a system asks of its site. */
export const utilitiesCalculations: readonly Calculation[] = [
  coolingWater,
  electricalLoad,
  floorLoad,
  gasConsumption,
  roomHeat,
];
