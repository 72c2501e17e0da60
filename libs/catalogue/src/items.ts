import type { Item } from '@flangewise/model';
import baffles from './data/baffles.json' with { type: 'json' };
import basket from './data/basket.json' with { type: 'json' };
import bottomValve from './data/bottomValve.json' with { type: 'json' };
import certificates from './data/certificates.json' with { type: 'json' };
import charging from './data/charging.json' with { type: 'json' };
import circulator from './data/circulator.json' with { type: 'json' };
import closure from './data/closure.json' with { type: 'json' };
import coil from './data/coil.json' with { type: 'json' };
import condenser from './data/condenser.json' with { type: 'json' };
import control from './data/control.json' with { type: 'json' };
import coupling from './data/coupling.json' with { type: 'json' };
import cover from './data/cover.json' with { type: 'json' };
import drive from './data/drive.json' with { type: 'json' };
import fluid from './data/fluid.json' with { type: 'json' };
import frame from './data/frame.json' with { type: 'json' };
import gasInlet from './data/gasInlet.json' with { type: 'json' };
import gasLimit from './data/gasLimit.json' with { type: 'json' };
import gasSupply from './data/gasSupply.json' with { type: 'json' };
import heater from './data/heater.json' with { type: 'json' };
import lift from './data/lift.json' with { type: 'json' };
import limiter from './data/limiter.json' with { type: 'json' };
import material from './data/material.json' with { type: 'json' };
import pressureGauge from './data/pressureGauge.json' with { type: 'json' };
import processProbe from './data/processProbe.json' with { type: 'json' };
import qualification from './data/qualification.json' with { type: 'json' };
import relief from './data/relief.json' with { type: 'json' };
import sampling from './data/sampling.json' with { type: 'json' };
import seal from './data/seal.json' with { type: 'json' };
import shaft from './data/shaft.json' with { type: 'json' };
import shield from './data/shield.json' with { type: 'json' };
import sightGlass from './data/sightGlass.json' with { type: 'json' };
import stirrer from './data/stirrer.json' with { type: 'json' };
import temperatureProbe from './data/temperatureProbe.json' with { type: 'json' };
import ventLine from './data/ventLine.json' with { type: 'json' };
import vessel from './data/vessel.json' with { type: 'json' };

/**
 * Every item of the demo range, in the order of the slots. The files hold items in full, defaults included;
 * a test holds them against the schema, so that nothing is parsed when the range is loaded.
 */
export const items = [
  vessel,
  material,
  closure,
  seal,
  cover,
  stirrer,
  shaft,
  baffles,
  coupling,
  heater,
  coil,
  temperatureProbe,
  limiter,
  relief,
  ventLine,
  pressureGauge,
  gasLimit,
  gasInlet,
  sampling,
  bottomValve,
  sightGlass,
  charging,
  condenser,
  basket,
  processProbe,
  shield,
  frame,
  lift,
  drive,
  circulator,
  fluid,
  gasSupply,
  control,
  certificates,
  qualification,
].flat() as unknown as readonly Item[];
