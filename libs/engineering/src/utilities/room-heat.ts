import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { atLeastZero, nameField, positive, share, sumOf } from './utilities-fields.js';

/** Heat that a cubic metre of air takes up per kelvin at 20 °C and 1 atm: 1.204 kg/m³ × 1006 J/(kg·K). */
const airHeatJPerM3K = 1.204 * 1006;

const emitter = z.strictObject({
  name: nameField,
  powerW: atLeastZero('W', 'P_i', 'Power: heat loss of a surface, or electrical power of a device'),
  shareToRoom: share('s_i', 'Share of it that ends as heat in the room; 1 unless given').default(1),
  simultaneity: share('g_i', 'Share of it at the peak; 1 unless given').default(1),
});

/**
 * Heat that a system gives to its room, and the air that carries it away.
 *
 *   Q = Σ s_i g_i P_i,  V = Q / (ρ c ΔT)
 *
 * @param emitters name, powerW P_i, shareToRoom s_i, simultaneity g_i of each
 * @param airTemperatureRiseK ΔT of the air, 5 K unless given
 * @returns heatToRoomW Q [W], largest emitter, airFlowM3PerH V [m³/h]
 * @range air at about 20 °C and 1 atm; radiation counted as heat of the air
 * @error CALC_OUT_OF_RANGE from the schema
 * @source energy balance; air: vdi-heat-atlas; shares and 5 K: common practice
 */
export const roomHeat = calculation({
  id: 'utilities.roomHeat',
  title: 'Heat to the room',
  inputs: z.strictObject({
    emitters: z.array(emitter).min(1).max(1000),
    airTemperatureRiseK: positive('K', 'ΔT', 'Rise of the temperature of the air; 5 K unless given').default(
      5,
    ),
  }),
  outputs: z.strictObject({
    heatToRoomW: quantity({ unit: 'W', symbol: 'Q', description: 'Heat given to the room' }),
    largestEmitter: z.string().meta({ description: 'Part that gives the most' }),
    airFlowM3PerH: quantity({ unit: 'm3/h', symbol: 'V', description: 'Air that carries it away' }),
  }),
  formula: String.raw`Q = \sum s_i g_i P_i,\quad \dot V = \frac{Q}{\rho\,c\,\Delta T}`,
  range: 'steady state; air at about 20 °C and 1 atm; heat stored in walls not counted',
  source: [
    published('vdi-heat-atlas properties of dry air'),
    commonPractice('utilities-practice shares to the room, air 5 K warmer'),
  ],
  compute: ({ emitters, airTemperatureRiseK }, log) => {
    const given = emitters.map((item) => ({
      name: item.name,
      heatW: item.powerW * item.shareToRoom * item.simultaneity,
    }));
    const heatToRoomW = sumOf(given, ({ heatW }) => heatW);
    const largest = given.reduce((most, item) => (item.heatW > most.heatW ? item : most));
    const airFlowM3PerH = (3600 * heatToRoomW) / (airHeatJPerM3K * airTemperatureRiseK);
    log?.({
      symbol: 'Q',
      formula: 'Σ s_i g_i P_i',
      substituted: given.map(({ name, heatW }) => `${name} ${shown(heatW)}`).join(' + '),
      value: heatToRoomW,
      unit: 'W',
    });
    log?.({
      symbol: 'V',
      formula: '3600 Q / (ρ c ΔT)',
      substituted: `3600 × ${shown(heatToRoomW)} / (${shown(airHeatJPerM3K)} × ${shown(airTemperatureRiseK)})`,
      value: airFlowM3PerH,
      unit: 'm3/h',
    });
    return succeed({ heatToRoomW, largestEmitter: largest.name, airFlowM3PerH });
  },
});
