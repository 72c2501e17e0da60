import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';

const length = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: 'm', symbol, description }, z.number().positive().max(20));

/** Share of the mass of a cantilever that acts at its end: 33/140 (Rayleigh). */
const shaftMassShare = 33 / 140;

/**
 * First critical speed of an overhung shaft with the impeller at its end.
 *
 *   k = 3 E I / (L² (L + a)),  I = π d⁴/64,  m = m_imp + 33/140 m_shaft,  N_c = √(k/m) / (2π)
 *
 * @param shaftDiameterM      d [m]
 * @param overhangM           L from the lower bearing to the impeller [m]
 * @param bearingSpanM        a between the two bearings [m]
 * @param impellerMassKg      m_imp [kg]
 * @param shaftDensityKgPerM3 ρ of the shaft [kg/m³]
 * @param elasticModulusPa    E of the shaft at temperature [Pa]
 * @returns criticalSpeedPerS N_c [1/s]
 * @range uniform shaft, rigid bearings, in air (liquid lowers it)
 * @error CALC_OUT_OF_RANGE outside the range
 * @source timoshenko-strength-1 deflection of an overhanging beam
 */
export const criticalSpeed = calculation({
  id: 'stirring.criticalSpeed',
  title: 'First critical speed of the shaft',
  inputs: z.strictObject({
    shaftDiameterM: length('d', 'Diameter of the shaft'),
    overhangM: length('L', 'Lower bearing to impeller'),
    bearingSpanM: length('a', 'Distance of the two bearings'),
    impellerMassKg: quantity(
      { unit: 'kg', symbol: 'm_imp', description: 'Mass of the impeller' },
      z.number().min(0),
    ),
    shaftDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the shaft' },
      z.number().positive(),
    ),
    elasticModulusPa: quantity(
      { unit: 'Pa', symbol: 'E', description: 'Elastic modulus of the shaft at temperature' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    criticalSpeedPerS: quantity({ unit: '1/s', symbol: 'N_c', description: 'First critical speed' }),
  }),
  formula: String.raw`N_c = \frac{1}{2\pi}\sqrt{\frac{3 E I}{L^2 (L + a)\left(m_{imp} + \tfrac{33}{140} m_{shaft}\right)}},\quad I = \frac{\pi d^4}{64}`,
  range: 'uniform overhung shaft in two rigid bearings, in air; usual speeds stay below 0.65 of it',
  source: [published('timoshenko-strength-1 overhanging beam')],
  compute: (inputs, log) => {
    const { shaftDiameterM: d, overhangM: l, bearingSpanM: a, elasticModulusPa: e } = inputs;
    const inertia = (Math.PI * d ** 4) / 64;
    const stiffness = (3 * e * inertia) / (l ** 2 * (l + a));
    const shaftMass = (Math.PI / 4) * d ** 2 * l * inputs.shaftDensityKgPerM3;
    const mass = inputs.impellerMassKg + shaftMassShare * shaftMass;
    const criticalSpeedPerS = Math.sqrt(stiffness / mass) / (2 * Math.PI);
    if (log) {
      log({
        symbol: 'k',
        formula: '3 E I / (L² (L + a))',
        substituted: `3 × ${shown(e)} × ${shown(inertia)} / (${shown(l)}² × (${shown(l)} + ${shown(a)}))`,
        value: stiffness,
        unit: 'N/m',
      });
      log({
        symbol: 'm',
        formula: 'm_imp + 33/140 m_shaft',
        substituted: `${shown(inputs.impellerMassKg)} + 33/140 × ${shown(shaftMass)}`,
        value: mass,
        unit: 'kg',
      });
      log({
        symbol: 'N_c',
        formula: '√(k/m) / (2π)',
        substituted: `√(${shown(stiffness)}/${shown(mass)}) / (2π)`,
        value: criticalSpeedPerS,
        unit: '1/s',
      });
    }
    return succeed({ criticalSpeedPerS });
  },
});
