import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { commonPractice, published } from '../source-reference.js';
import glass from './borosilicate-glass.json' with { type: 'json' };
import { length } from './pressure-fields.js';

/**
 * Permissible pressure PS of a borosilicate glass vessel: falls with the bore, and is never above the cap.
 *
 *   p_t = 20 σ s / (d_o − s)                        tube formula
 *   p_L = 10 σ (d_o² − d_i²) / (d_o² + d_i²)        Lamé at the bore, the lower one, felt in thick walls
 *   PS  = min(p_t, p_L, cap)      p [bar], σ [N/mm²]
 *
 * Undamaged glass without thermal stress; a shield is compulsory, and stored energy of a gas asks for a barrier.
 *
 * @param thicknessM          s, smallest wall [m]
 * @param permissibleStressPa σ [Pa], 7 N/mm² unless given
 * @param capBarGauge         12 bar unless given [bar]
 * @returns pressureBarGauge PS, wallPressureBarGauge without the cap [bar], limitedBy
 * @range wall from 0.5 % of the bore to half of it
 * @error CALC_OUT_OF_RANGE from the schema
 * @source en-1595 (permissible stress); glass tube property sheet; timoshenko-strength-2 §11; cap: common practice
 */
export const glassVessel = calculation({
  id: 'strength.glassVessel',
  title: 'Permissible pressure of a glass vessel',
  inputs: z.strictObject({
    innerDiameterM: length('d_i', 'Bore'),
    thicknessM: length('s', 'Smallest wall thickness'),
    permissibleStressPa: quantity(
      { unit: 'Pa', symbol: 'σ', description: 'Permissible tensile stress; 7 N/mm² unless given' },
      z.number().positive().max(7e6),
    ).optional(),
    capBarGauge: quantity(
      {
        unit: 'bar',
        symbol: 'p_max',
        description: 'Highest pressure whatever the bore; 12 bar unless given',
      },
      z.number().positive().max(12),
    ).optional(),
  }),
  outputs: z.strictObject({
    pressureBarGauge: quantity({
      unit: 'bar',
      symbol: 'PS',
      description: 'Permissible internal pressure (gauge)',
    }),
    wallPressureBarGauge: quantity({
      unit: 'bar',
      symbol: 'p_w',
      description: 'What the wall alone would carry',
    }),
    limitedBy: z.enum(['wall', 'cap']).meta({ description: 'What limits the pressure' }),
  }),
  formula: String.raw`PS = \min\left(\frac{20\,\sigma s}{d_o - s},\ 10\,\sigma\frac{d_o^2-d_i^2}{d_o^2+d_i^2},\ 12\right)`,
  range: 'borosilicate glass 3.3, undamaged, no thermal stress; stress at most 7 N/mm², cap at most 12 bar',
  source: [
    published('en-1595'),
    published('glass-tube-property-sheet'),
    published('timoshenko-strength-2 §11'),
    commonPractice('highest pressure of glass vessels 12 bar, shield compulsory'),
  ],
  compute: (inputs, log) => {
    const { innerDiameterM: d_i, thicknessM: s } = inputs;
    const σ = (inputs.permissibleStressPa ?? glass.permissibleStressPa.value) / 1e6;
    const cap = inputs.capBarGauge ?? glass.highestPressureBarGauge.value;
    const d_o = d_i + 2 * s;
    const ratio = (d_i / d_o) ** 2;
    const wallPressureBarGauge = Math.min((20 * σ * s) / (d_o - s), (10 * σ * (1 - ratio)) / (1 + ratio));
    const pressureBarGauge = Math.min(wallPressureBarGauge, cap);
    log?.(
      formulaStep({
        symbol: 'p_w',
        formula: 'min(20 · σ · s / (d_o − s), 10 · σ · (d_o² − d_i²) / (d_o² + d_i²))',
        where: { σ, s, d_o, d_i },
        value: wallPressureBarGauge,
        unit: 'bar',
        note: 'σ in N/mm², EN 1595; undamaged, no thermal stress',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'PS',
        formula: 'min(p_w, p_max)',
        where: { p_w: wallPressureBarGauge, p_max: cap },
        value: pressureBarGauge,
        unit: 'bar',
        note: 'cap: common practice; a shield is compulsory',
      }),
    );
    return succeed({
      pressureBarGauge,
      wallPressureBarGauge,
      limitedBy: wallPressureBarGauge <= cap ? ('wall' as const) : ('cap' as const),
    });
  },
});
