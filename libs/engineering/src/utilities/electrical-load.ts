import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';
import { atLeastZero, nameField, positive, share, sumOf } from './utilities-fields.js';

const consumer = z.strictObject({
  name: nameField,
  powerW: atLeastZero('W', 'P_i', 'Electrical power taken up at full load, active'),
  powerFactor: quantity(
    { unit: '1', symbol: 'cos φ_i', description: 'Power factor; 1, a heater, unless given' },
    z.number().min(0.1).max(1),
  ).default(1),
  simultaneity: share('g_i', 'Share of it that runs at the peak; 1 unless given').default(1),
});

/**
 * Connected and simultaneous electrical load of a system, and the current of its supply line.
 *
 *   P = g Σ g_i P_i,  Q = g Σ g_i P_i tan φ_i,  S = √(P² + Q²),  I = S / (√3 U)  or  S / U
 *
 * @param consumers          name, powerW P_i, powerFactor cos φ_i, simultaneity g_i of each
 * @param simultaneityFactor g of all, 1 unless given [-]
 * @param voltageV           U between lines, 400 unless given [V]; phases 1 or 3
 * @returns connectedW Σ P_i, loadW P, apparentVA S, powerFactor P/S, currentA I per line
 * @range lagging power factors from 0.1 to 1; balanced lines; starting currents and harmonics not counted
 * @error CALC_OUT_OF_RANGE from the schema
 * @source three-phase-power; simultaneity factors: common practice
 */
export const electricalLoad = calculation({
  id: 'utilities.electricalLoad',
  title: 'Electrical load and line current',
  inputs: z.strictObject({
    consumers: z.array(consumer).min(1).max(1000),
    simultaneityFactor: share('g', 'Share of the whole load that runs at once; 1 unless given').default(1),
    voltageV: positive('V', 'U', 'Nominal voltage, between lines where there are three').default(400),
    phases: z
      .union([z.literal(1), z.literal(3)])
      .default(3)
      .meta({ description: 'Number of lines under load' }),
  }),
  outputs: z.strictObject({
    connectedW: quantity({ unit: 'W', symbol: 'P_n', description: 'Connected load' }),
    loadW: quantity({ unit: 'W', symbol: 'P', description: 'Load at the peak, active' }),
    apparentVA: quantity({ unit: 'V.A', symbol: 'S', description: 'Load at the peak, apparent' }),
    powerFactor: quantity({ unit: '1', symbol: 'cos φ', description: 'Power factor of the whole' }),
    currentA: quantity({ unit: 'A', symbol: 'I', description: 'Current of each line at the peak' }),
  }),
  formula: String.raw`P = g \sum g_i P_i,\quad S = \sqrt{P^2 + \left(g \sum g_i P_i \tan\varphi_i\right)^2},\quad I = \frac{S}{\sqrt{3}\,U}`,
  range: 'power factors from 0.1 to 1, lagging; lines loaded alike; without starting currents and harmonics',
  source: [
    published('three-phase-power'),
    commonPractice('utilities-practice simultaneity by what runs together'),
  ],
  compute: ({ consumers, simultaneityFactor: g, voltageV: U, phases }, log) => {
    const connectedW = sumOf(consumers, ({ powerW }) => powerW);
    const loadW = g * sumOf(consumers, ({ powerW, simultaneity }) => powerW * simultaneity);
    const reactive =
      g *
      sumOf(
        consumers,
        ({ powerW, simultaneity, powerFactor }) => powerW * simultaneity * Math.tan(Math.acos(powerFactor)),
      );
    const apparentVA = Math.hypot(loadW, reactive);
    const currentA = apparentVA / (phases === 3 ? Math.sqrt(3) * U : U);
    log?.({
      symbol: 'P',
      formula: 'g Σ g_i P_i',
      substituted: `${shown(g)} × (${consumers.map((c) => `${shown(c.simultaneity)} × ${shown(c.powerW)}`).join(' + ')})`,
      value: loadW,
      unit: 'W',
      note: `connected ${shown(connectedW)} W`,
    });
    log?.({
      symbol: 'S',
      formula: '√(P² + Q²), Q = g Σ g_i P_i tan φ_i',
      substituted: `√(${shown(loadW)}² + ${shown(reactive)}²)`,
      value: apparentVA,
      unit: 'V.A',
    });
    log?.({
      symbol: 'I',
      formula: phases === 3 ? 'S / (√3 U)' : 'S / U',
      substituted: `${shown(apparentVA)} / ${phases === 3 ? '(√3 × ' : ''}${shown(U)}${phases === 3 ? ')' : ''}`,
      value: currentA,
      unit: 'A',
    });
    return succeed({
      connectedW,
      loadW,
      apparentVA,
      powerFactor: apparentVA === 0 ? 1 : loadW / apparentVA,
      currentA,
    });
  },
});
