import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { commonPractice, published } from '../source-reference.js';

const usualFraction = 0.7;

/**
 * Share of the mass of an overhung shaft that counts at its tip, from the shape of the shaft under a force at the tip,
 * both for the overhang L and for the span λ L between the bearings.
 *
 *   (4λ²/3 + 2.2 λ + 33/35 + 8 λ⁵/105) / (4 (1 + λ)²),  33/140 for a built-in shaft (λ = 0)
 */
export const tipMassShare = (spanOverOverhang: number): number => {
  const λ = spanOverOverhang;
  return ((4 * λ * λ) / 3 + 2.2 * λ + 33 / 35 + (8 * λ ** 5) / 105) / (4 * (1 + λ) ** 2);
};

/**
 * First critical speed of an overhung stirrer shaft in two bearings, by Rayleigh's method, and its deflection.
 *
 *   I = π/64 (d⁴ − d_i⁴)   k = 3 E I / (L² (L + a))   m = m_t + s ρ A L   N_c = √(k/m) / (2π)
 *
 * Rayleigh's shape gives up to 1.5 % too high a speed; the share kept from it covers that. Liquid round the shaft
 * lowers the speed further; baffles and steady bearings are not counted.
 *
 * @param overhangM      L, from the lower bearing to the impeller [m]
 * @param bearingSpanM   a, 0 for a built-in shaft [m]
 * @param tipMassKg      m_t, impeller with the liquid that moves along [kg]
 * @param lateralForceN  at the impeller [N]
 * @param speedFraction  highest speed over critical speed, 0.7 unless given, at most 0.8 [-]
 * @returns criticalSpeedPerS, highestSpeedPerS [1/s], tipStiffnessNPerM, tipDeflectionM where a force is given
 * @range d_i < d, lengths above zero
 * @error CALC_OUT_OF_RANGE outside the range
 * @source timoshenko-vibration-2 §5 (Rayleigh); beam theory; share of the critical speed: common practice
 */
export const shaftCriticalSpeed = calculation({
  id: 'coupling.shaftCriticalSpeed',
  title: 'First critical speed of a stirrer shaft',
  inputs: z.strictObject({
    overhangM: quantity(
      { unit: 'm', symbol: 'L', description: 'Length below the lower bearing' },
      z.number().positive(),
    ),
    bearingSpanM: quantity(
      { unit: 'm', symbol: 'a', description: 'Distance of the bearings' },
      z.number().min(0),
    ),
    diameterM: quantity(
      { unit: 'm', symbol: 'd', description: 'Diameter of the shaft' },
      z.number().positive(),
    ),
    innerDiameterM: quantity(
      { unit: 'm', symbol: 'd_i', description: 'Bore of a hollow shaft; 0 unless given' },
      z.number().min(0),
    ).optional(),
    tipMassKg: quantity(
      { unit: 'kg', symbol: 'm_t', description: 'Mass at the end of the shaft' },
      z.number().min(0),
    ),
    elasticModulusPa: quantity(
      { unit: 'Pa', symbol: 'E', description: 'Modulus of elasticity' },
      z.number().positive(),
    ),
    densityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ', description: 'Density of the shaft' },
      z.number().positive(),
    ),
    lateralForceN: quantity(
      { unit: 'N', symbol: 'F', description: 'Lateral force at the impeller' },
      z.number().min(0),
    ).optional(),
    speedFraction: quantity(
      { unit: '1', symbol: 'c', description: 'Highest speed over critical speed; 0.7 unless given' },
      z.number().positive().max(0.8),
    ).optional(),
  }),
  outputs: z.strictObject({
    criticalSpeedPerS: quantity({ unit: '1/s', symbol: 'N_c', description: 'First critical speed' }),
    highestSpeedPerS: quantity({ unit: '1/s', symbol: 'N_max', description: 'Highest allowed speed' }),
    tipStiffnessNPerM: quantity({ unit: 'N/m', symbol: 'k', description: 'Stiffness at the impeller' }),
    tipDeflectionM: quantity({
      unit: 'm',
      symbol: 'y',
      description: 'Deflection at the impeller',
    }).optional(),
  }),
  formula: String.raw`N_c = \frac{1}{2\pi}\sqrt{\frac{3 E I / (L^2 (L + a))}{m_t + s\,\rho A L}}`,
  range: 'even overhung shaft in two rigid bearings or built in; below the first critical speed',
  source: [
    published('timoshenko-vibration-2 §5'),
    published('timoshenko-strength-1 (overhanging beam)'),
    commonPractice('highest speed 70 to 80 % of the first critical speed'),
  ],
  compute: (given, log) => {
    const {
      overhangM: L,
      bearingSpanM: a,
      diameterM: d,
      innerDiameterM: d_i = 0,
      elasticModulusPa: E,
    } = given;
    if (d_i >= d) {
      return outOfRange({
        field: 'innerDiameterM',
        given: d_i,
        unit: 'm',
        allowed: `less than the diameter (${shown(d)} m)`,
      });
    }
    const I = (Math.PI / 64) * (d ** 4 - d_i ** 4);
    const A = (Math.PI / 4) * (d ** 2 - d_i ** 2);
    const k = (3 * E * I) / (L ** 2 * (L + a));
    const share = tipMassShare(a / L);
    const m = given.tipMassKg + share * given.densityKgPerM3 * A * L;
    const criticalSpeedPerS = Math.sqrt(k / m) / (2 * Math.PI);
    const c = given.speedFraction ?? usualFraction;
    const F = given.lateralForceN;
    log?.(
      formulaStep({ symbol: 'I', formula: 'π / 64 · (d⁴ − d_i⁴)', where: { d, d_i }, value: I, unit: 'm4' }),
    );
    log?.(
      formulaStep({
        symbol: 'k',
        formula: '3 · E · I / (L² · (L + a))',
        where: { E, I, L, a },
        value: k,
        unit: 'N/m',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'm',
        formula: 'm_t + s · ρ · A · L',
        where: { m_t: given.tipMassKg, s: share, ρ: given.densityKgPerM3, A, L },
        value: m,
        unit: 'kg',
        note: 's: share of the mass of the shaft that counts at its end, Rayleigh',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'N_c',
        formula: '√(k / m) / (2 · π)',
        where: { k, m },
        value: criticalSpeedPerS,
        unit: '1/s',
      }),
    );
    log?.(
      formulaStep({
        symbol: 'N_max',
        formula: 'c · N_c',
        where: { c, N_c: criticalSpeedPerS },
        value: c * criticalSpeedPerS,
        unit: '1/s',
        note: given.speedFraction === undefined ? 'common practice' : undefined,
      }),
    );
    return succeed({
      criticalSpeedPerS,
      highestSpeedPerS: c * criticalSpeedPerS,
      tipStiffnessNPerM: k,
      ...(F === undefined ? {} : { tipDeflectionM: F / k }),
    });
  },
});
