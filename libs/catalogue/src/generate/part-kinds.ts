import type { Kind } from './kind.js';
import {
  baskets,
  bottomValves,
  chargingDevices,
  condensers,
  processProbes,
  shields,
  sightGlasses,
} from './kinds/accessories.js';
import { closures, seals } from './kinds/closing.js';
import { circulators, coils, fluids, heaters } from './kinds/heating.js';
import { gasInlets, samplers, temperatureProbes } from './kinds/immersed.js';
import { discs, gasLimits, gauges, ventLines } from './kinds/relief.js';
import { baffleCages, couplings, drives, shafts, stirrers } from './kinds/stirring.js';
import {
  certificates,
  controllers,
  frames,
  gasSupplies,
  lifts,
  limiters,
  qualifications,
} from './kinds/supply.js';

/** Every kind of part that has series; vessels and covers have designs of their own, materials are typed. */
export const partKinds: readonly Kind[] = [
  closures,
  seals,
  stirrers,
  shafts,
  baffleCages,
  couplings,
  heaters,
  coils,
  temperatureProbes,
  limiters,
  discs,
  ventLines,
  gauges,
  gasLimits,
  gasInlets,
  samplers,
  bottomValves,
  sightGlasses,
  chargingDevices,
  condensers,
  baskets,
  processProbes,
  shields,
  frames,
  lifts,
  drives,
  circulators,
  fluids,
  gasSupplies,
  controllers,
  certificates,
  qualifications,
];
