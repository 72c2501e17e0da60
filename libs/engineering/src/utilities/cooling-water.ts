import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { atLeastZero, nameField, positive, share, sumOf } from './utilities-fields.js';

const duty = z.strictObject({
  name: nameField,
  heatW: atLeastZero('W', 'Q_i', 'Heat given to the cooling water at its highest'),
});

/**
 * Cooling water that the heat of a system needs.
 *
 *   W = g Σ Q_i / (c (T_out − T_in)),  V = W / ρ
 *
 * @param duties                  name, heatW Q_i of each
 * @param inletTemperatureK T_in, outletTemperatureK T_out [K]
 * @param simultaneityFactor      g, 1 unless given [-]
 * @param heatCapacityJPerKgK c, densityKgPerM3 ρ: 4186 and 998, water at 20 °C, unless given
 * @returns heatW, flowKgPerS W, flowM3PerH V
 * @range T_out above T_in; no boiling, no freezing: the temperatures are those of the site
 * @error CALC_OUT_OF_RANGE where the outlet is not above the inlet
 * @source energy balance; water: perry-8 table 2-30 and 2-153
 */
export const coolingWater = calculation({
  id: 'utilities.coolingWater',
  title: 'Cooling water flow',
  inputs: z.strictObject({
    duties: z.array(duty).min(1).max(1000),
    simultaneityFactor: share('g', 'Share of the whole heat at once; 1 unless given').default(1),
    inletTemperatureK: positive('K', 'T_in', 'Temperature of the water from the site'),
    outletTemperatureK: positive('K', 'T_out', 'Highest temperature of the water returned'),
    heatCapacityJPerKgK: positive('J/(kg.K)', 'c', 'Heat capacity; water unless given').default(4186),
    densityKgPerM3: positive('kg/m3', 'ρ', 'Density; water unless given').default(998),
  }),
  outputs: z.strictObject({
    heatW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat to be taken up at once' }),
    flowKgPerS: quantity({ unit: 'kg/s', symbol: 'W', description: 'Mass flow of the water' }),
    flowM3PerH: quantity({ unit: 'm3/h', symbol: 'V', description: 'Volume flow of the water' }),
  }),
  formula: String.raw`W = \frac{g \sum Q_i}{c\,(T_\mathrm{out} - T_\mathrm{in})},\quad \dot V = \frac{W}{\rho}`,
  range: 'outlet above inlet, liquid; pressure drop not counted',
  source: [
    published('perry-8 heat capacity and density of water'),
    commonPractice('utilities-practice simultaneity by what runs together'),
  ],
  compute: (given, log) => {
    const { duties, simultaneityFactor: g, inletTemperatureK: cold, outletTemperatureK: warm } = given;
    if (warm <= cold) {
      return outOfRange({
        field: 'outletTemperatureK',
        given: warm,
        unit: 'K',
        allowed: `above inletTemperatureK (${shown(cold)} K)`,
      });
    }
    const heatW = g * sumOf(duties, ({ heatW: each }) => each);
    const flowKgPerS = heatW / (given.heatCapacityJPerKgK * (warm - cold));
    const flowM3PerH = (3600 * flowKgPerS) / given.densityKgPerM3;
    log?.({
      symbol: 'Q',
      formula: 'g Σ Q_i',
      substituted: `${shown(g)} × (${duties.map(({ heatW: each }) => shown(each)).join(' + ')})`,
      value: heatW,
      unit: 'W',
    });
    log?.({
      symbol: 'W',
      formula: 'Q / (c (T_out − T_in))',
      substituted: `${shown(heatW)} / (${shown(given.heatCapacityJPerKgK)} × (${shown(warm)} − ${shown(cold)}))`,
      value: flowKgPerS,
      unit: 'kg/s',
    });
    log?.({
      symbol: 'V',
      formula: '3600 W / ρ',
      substituted: `3600 × ${shown(flowKgPerS)} / ${shown(given.densityKgPerM3)}`,
      value: flowM3PerH,
      unit: 'm3/h',
    });
    return succeed({ heatW, flowKgPerS, flowM3PerH });
  },
});
