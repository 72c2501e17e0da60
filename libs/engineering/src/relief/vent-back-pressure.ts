import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { normalAtmospherePa } from '@flangewise/quantities';
import { calculation, quantity } from '../calculation.js';
import { outOfRange } from '../out-of-range.js';
import { published } from '../source-reference.js';
import { shown } from '../shown.js';
import { inletMachOf } from './fanno-flow.js';
import { ventExit } from './vent-exit.js';
import { ventFields } from './vent-fields.js';

/** Roughness of clean commercial steel pipe [m]. */
const steelRoughnessM = 4.6e-5;

/** Darcy friction factor of fully rough pipe. */
const roughFrictionFactor = (roughness: number, diameter: number): number =>
  (2 * Math.log10((3.7 * diameter) / roughness)) ** -2;

/**
 * Back pressure that a gas stream makes in a vent line that ends in the open (adiabatic, with friction).
 *
 *   K = f L/d + ΣK,  f = (2 log10(3.7 d/ε))^(−2)
 *   exit: M_2 from W, at most 1; inlet: M_1 from K and M_2 (Fanno)
 *   p_b = p_e (M_2/M_1) √( (1 + h M_2²)/(1 + h M_1²) ),  h = (k − 1)/2
 *
 * @param massFlowKgPerS       W [kg/s]
 * @param temperatureK         stagnation temperature [K]
 * @param molarMassKgPerMol    M [kg/mol]; isentropicExponent k; compressibilityFactor Z, 1 where not given
 * @param lineDiameterM        d [m]; lineLengthM L [m]; fittingResistance ΣK [-], 0 where not given
 * @param roughnessM           ε [m], 46 µm where not given
 * @param ambientPressurePaAbs p_a [Pa], standard atmosphere where not given
 * @returns backPressurePaAbs p_b [Pa] static at the inlet of the line; exitMach M_2; frictionFactor f
 * @range W > 0, ε < d/10
 * @error CALC_OUT_OF_RANGE outside the range
 * @source fanno-flow; colebrook-1939 fully rough; roughness 46 µm: crane-tp-410:1991
 */
export const ventBackPressure = calculation({
  id: 'relief.ventBackPressure',
  title: 'Back pressure of the vent line',
  inputs: z.strictObject({
    ...ventFields,
    massFlowKgPerS: ventFields.massFlowKgPerS.positive(),
    lineLengthM: quantity(
      { unit: 'm', symbol: 'L', description: 'Length of the vent line' },
      z.number().min(0).max(10_000),
    ),
    fittingResistance: quantity(
      { unit: '1', symbol: 'ΣK', description: 'Resistance of bends and fittings; 0 where nothing is given' },
      z.number().min(0).max(1000),
    ).optional(),
    roughnessM: quantity(
      { unit: 'm', symbol: 'ε', description: 'Roughness of the pipe; 46 µm where nothing is given' },
      z.number().positive().max(1e-3),
    ).optional(),
  }),
  outputs: z.strictObject({
    backPressurePaAbs: quantity({
      unit: 'Pa',
      symbol: 'p_b',
      description: 'Static pressure behind the device, absolute',
    }),
    exitMach: quantity({ unit: '1', symbol: 'M_2', description: 'Mach number at the open end' }),
    frictionFactor: quantity({ unit: '1', symbol: 'f', description: 'Darcy friction factor' }),
  }),
  formula: String.raw`p_b = p_e \frac{M_2}{M_1} \sqrt{\frac{1 + h M_2^2}{1 + h M_1^2}},\quad h = \frac{k-1}{2},\quad K = f \frac{L}{d} + \Sigma K,\quad f = \left(2 \log_{10} \frac{3.7\,d}{\varepsilon}\right)^{-2}`,
  range: 'W > 0; one line of constant diameter, open end, perfect gas, fully rough pipe',
  source: [published('fanno-flow'), published('colebrook-1939 fully rough')],
  compute: (inputs, log) => {
    const { lineDiameterM: d, isentropicExponent: k } = inputs;
    const roughness = inputs.roughnessM ?? steelRoughnessM;
    if (roughness > d / 10) {
      return outOfRange({
        field: 'roughnessM',
        given: roughness,
        unit: 'm',
        allowed: `up to a tenth of the line diameter, ${shown(d / 10)} m`,
      });
    }
    const exit = ventExit({
      ...inputs,
      compressibilityFactor: inputs.compressibilityFactor ?? 1,
      ambientPressurePaAbs: inputs.ambientPressurePaAbs ?? normalAtmospherePa,
    });
    const frictionFactor = roughFrictionFactor(roughness, d);
    const resistance = (frictionFactor * inputs.lineLengthM) / d + (inputs.fittingResistance ?? 0);
    const inletMach =
      resistance === 0
        ? exit.mach
        : inletMachOf({ isentropicExponent: k, totalResistance: resistance }, exit.mach);
    const h = (k - 1) / 2;
    const backPressurePaAbs =
      exit.pressurePaAbs *
      (exit.mach / inletMach) *
      Math.sqrt((1 + h * exit.mach ** 2) / (1 + h * inletMach ** 2));
    if (log) {
      log({
        symbol: 'M_2',
        formula: 'W/A √(Z R T/(k M)) / p_a = M_2 √(1 + h M_2²), at most 1',
        substituted: `W = ${shown(inputs.massFlowKgPerS)}, A = ${shown(exit.areaM2)}, T = ${shown(inputs.temperatureK)}`,
        value: exit.mach,
        unit: '1',
        note: exit.mach < 1 ? 'not choked' : `choked, ${shown(exit.pressurePaAbs)} Pa at the open end`,
      });
      log({
        symbol: 'K',
        formula: 'f L/d + ΣK',
        substituted: `${shown(frictionFactor)} × ${shown(inputs.lineLengthM)} / ${shown(d)} + ${shown(inputs.fittingResistance ?? 0)}`,
        value: resistance,
        unit: '1',
      });
      log({
        symbol: 'M_1',
        formula: 'adiabatic flow with friction',
        substituted: `k = ${shown(k)}, K = ${shown(resistance)}, M_2 = ${shown(exit.mach)}`,
        value: inletMach,
        unit: '1',
      });
      log({
        symbol: 'p_b',
        formula: 'p_e (M_2/M_1) √((1 + h M_2²)/(1 + h M_1²))',
        substituted: `${shown(exit.pressurePaAbs)} × (${shown(exit.mach)}/${shown(inletMach)}) × √((1 + ${shown(h)} × ${shown(exit.mach)}²)/(1 + ${shown(h)} × ${shown(inletMach)}²))`,
        value: backPressurePaAbs,
        unit: 'Pa',
      });
    }
    return succeed({ backPressurePaAbs, exitMach: exit.mach, frictionFactor });
  },
});
