import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { molarGasConstant } from '../molar-gas-constant.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { fannoFlow } from './fanno-flow.js';
import { nozzleMassFlux } from './isentropic-flow.js';
import {
  compressibilityFactor,
  isentropicExponent,
  molarMassKgPerMol,
  temperatureK,
} from './relief-fields.js';

/**
 * Mass flow of a gas through a line of total resistance K between two pressures, adiabatic with friction.
 *
 *   G = M_1 √(k p_1 ρ_1), M_1 from K and p_2/p_1 (Fanno; choked where the line end reaches M = 1)
 *   never more than an ideal nozzle passes between the same pressures
 *
 * Agrees with the net expansion factor of the nomographs within 3 % over K 1.2 to 100.
 *
 * @param upstreamPressurePaAbs    p_1, static, in front of the line [Pa]
 * @param downstreamPressurePaAbs  p_2 [Pa]
 * @param lineDiameterM            d, inner [m]
 * @param totalResistance          K with entrance, pipe, fittings and exit [-]
 * @param isentropicExponent       k [-]; isothermal flow (k = 1) where not given
 * @param upstreamDensityKgPerM3   ρ_1 [kg/m³], or else
 * @param temperatureK             T_1 [K], with
 * @param molarMassKgPerMol        M [kg/mol] and
 * @param compressibilityFactor    Z [-], 1 where not given
 * @returns massFlowKgPerS [kg/s]
 * @range p_2 ≤ p_1, K > 0
 * @error CALC_OUT_OF_RANGE outside the range; CALC_INVALID_INPUT without density or temperature and molar mass
 * @source fanno-flow; crane-tp-410:1991 examples 7-21, 7-22 (checks)
 */
export const lineFlow = calculation({
  id: 'relief.lineFlow',
  title: 'Gas flow through a line',
  inputs: z.strictObject({
    upstreamPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p_1', description: 'Static pressure in front of the line, absolute' },
      z.number().positive(),
    ),
    downstreamPressurePaAbs: quantity(
      { unit: 'Pa', symbol: 'p_2', description: 'Pressure behind the line, absolute' },
      z.number().positive(),
    ),
    temperatureK: temperatureK.optional(),
    molarMassKgPerMol: molarMassKgPerMol.optional(),
    compressibilityFactor: compressibilityFactor.optional(),
    upstreamDensityKgPerM3: quantity(
      { unit: 'kg/m3', symbol: 'ρ_1', description: 'Density in front of the line' },
      z.number().positive(),
    ).optional(),
    isentropicExponent: isentropicExponent.optional(),
    lineDiameterM: quantity(
      { unit: 'm', symbol: 'd', description: 'Inner diameter of the line' },
      z.number().positive(),
    ),
    totalResistance: quantity(
      { unit: '1', symbol: 'K', description: 'Resistance of entrance, pipe, fittings and exit' },
      z.number().positive(),
    ),
  }),
  outputs: z.strictObject({
    massFlowKgPerS: quantity({ unit: 'kg/s', symbol: 'W', description: 'Mass flow' }),
  }),
  formula: String.raw`W = \tfrac{\pi}{4} d^2 M_1 \sqrt{k\,p_1 \rho_1},\quad k K M_1^2 = 1 - \frac{M_1^2}{M_2^2} + \frac{k+1}{2} M_1^2 \ln \frac{M_1^2 (1 + h M_2^2)}{M_2^2 (1 + h M_1^2)},\quad h = \frac{k-1}{2}`,
  range: '0 < p_2 ≤ p_1, K > 0, perfect gas, adiabatic (isothermal at k = 1)',
  source: [published('fanno-flow'), published('crane-tp-410:1991 examples 7-21, 7-22')],
  compute: (inputs, log) => {
    const { upstreamPressurePaAbs: p1, downstreamPressurePaAbs: p2, isentropicExponent: k = 1 } = inputs;
    if (p2 > p1) {
      return outOfRange({
        field: 'downstreamPressurePaAbs',
        given: p2,
        unit: 'Pa',
        allowed: `up to ${shown(p1)} Pa`,
      });
    }
    const density =
      inputs.upstreamDensityKgPerM3 ??
      (inputs.temperatureK === undefined || inputs.molarMassKgPerMol === undefined
        ? undefined
        : (p1 * inputs.molarMassKgPerMol) /
          ((inputs.compressibilityFactor ?? 1) * molarGasConstant * inputs.temperatureK));
    if (density === undefined) {
      return missingInput('upstreamDensityKgPerM3', 'give it, or temperatureK and molarMassKgPerMol');
    }
    const line = fannoFlow({
      isentropicExponent: k,
      totalResistance: inputs.totalResistance,
      pressureRatio: p2 / p1,
    });
    const friction = line.inletMach * Math.sqrt(k * p1 * density);
    const nozzle = nozzleMassFlux({
      pressurePaAbs: p1,
      backPressurePaAbs: p2,
      densityKgPerM3: density,
      isentropicExponent: k,
    }).massFlux;
    const massFlux = Math.min(friction, nozzle);
    const massFlowKgPerS = (Math.PI / 4) * inputs.lineDiameterM ** 2 * massFlux;
    if (log) {
      log({
        symbol: 'M_1',
        formula: 'k K M_1² = 1 − (M_1/M_2)² + (k + 1)/2 M_1² ln((M_1/M_2)² (1 + h M_2²)/(1 + h M_1²))',
        substituted: `k = ${shown(k)}, K = ${shown(inputs.totalResistance)}, p_2/p_1 = ${shown(p2 / p1)}`,
        value: line.inletMach,
        unit: '1',
        note: line.choked ? 'choked at the end of the line' : 'not choked',
      });
      log({
        symbol: 'G',
        formula: 'M_1 √(k p_1 ρ_1), at most that of an ideal nozzle',
        substituted: `min(${shown(friction)}, ${shown(nozzle)})`,
        value: massFlux,
        unit: 'kg/(m2.s)',
      });
      log({
        symbol: 'W',
        formula: 'π/4 d² G',
        substituted: `π/4 × ${shown(inputs.lineDiameterM)}² × ${shown(massFlux)}`,
        value: massFlowKgPerS,
        unit: 'kg/s',
      });
    }
    return succeed({ massFlowKgPerS });
  },
});
