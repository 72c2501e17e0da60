import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { shown } from '../shown.js';
import { impellerFields, liquidFields } from './impeller-fields.js';
import { viscosityAtImpeller } from './liquid-viscosity-at-impeller.js';
import { powerCurveOf, powerCurveSources } from './power-curve.js';
import { powerOutput, reynoldsOutput, speedPerS, torqueOutput } from './stirring-fields.js';

/**
 * Torque and power of an impeller at a speed, with the upper end that coupling and motor must carry.
 *
 *   Re = ρ N D² / μ,  M = Np ρ N² D⁵ / (2π),  M_high = Np_high at the viscosity of the high end
 *
 * A power-law liquid is taken at the shear rate k_s N, for the high end with the k_s that makes it thicker.
 *
 * @param impeller and vessel as in `impellerFields`; liquid by viscosity or power law
 * @param speedPerS N [1/s]
 * @returns reynolds, powerNumber [-]; torqueNm, highTorqueNm [N·m]; powerW, highPowerW [W]; tipSpeedMPerS [m/s]
 * @range as stirring.powerNumber
 * @error CALC_OUT_OF_RANGE outside the range; CALC_INVALID_INPUT without a viscosity
 * @source furukawa-2012; rieger-1988; beckner-smith-1966; metzner-otto-1957
 */
export const impellerTorque = calculation({
  id: 'stirring.impellerTorque',
  title: 'Torque of an impeller at a speed',
  inputs: z.strictObject({ ...impellerFields, ...liquidFields, speedPerS }),
  outputs: z.strictObject({
    reynolds: reynoldsOutput,
    powerNumber: quantity({ unit: '1', symbol: 'Np', description: 'Power number, central value' }),
    torqueNm: torqueOutput,
    highTorqueNm: quantity({ unit: 'N.m', symbol: 'M_high', description: 'Upper end of the torque' }),
    powerW: powerOutput,
    highPowerW: quantity({ unit: 'W', symbol: 'P_high', description: 'Upper end of the power' }),
    tipSpeedMPerS: quantity({ unit: 'm/s', symbol: 'u', description: 'Tip speed π N D' }),
  }),
  formula: String.raw`M = \frac{Np\,\rho N^2 D^5}{2\pi},\quad P = 2\pi N M,\quad u = \pi N D`,
  range:
    'as stirring.powerNumber; below Re 1e-4 the laminar, above 1e8 the turbulent law goes on; one impeller on the shaft',
  source: [...powerCurveSources, { citation: 'metzner-otto-1957', basis: 'published' }],
  compute: (inputs, log) => {
    const curve = powerCurveOf(inputs);
    if (!curve.ok) return curve;
    const viscosity = viscosityAtImpeller(inputs, curve.value.constants);
    if (!viscosity.ok) return viscosity;
    const { at, high } = curve.value;
    const { speedPerS: n, densityKgPerM3: rho, impellerDiameterM: d } = inputs;
    const central = viscosity.value.central(n);
    const thick = viscosity.value.high(n);
    const reynolds = (rho * n * d ** 2) / central;
    const powerNumber = at(reynolds);
    const dynamic = (rho * n ** 2 * d ** 5) / (2 * Math.PI);
    const torqueNm = powerNumber * dynamic;
    const thickReynolds = (rho * n * d ** 2) / thick;
    const thickPowerNumber = thick === central ? powerNumber : at(thickReynolds);
    const highTorqueNm = high * thickPowerNumber * dynamic;
    const turns = 2 * Math.PI * n;
    const [powerW, highPowerW] = [turns * torqueNm, turns * highTorqueNm];
    const tipSpeedMPerS = Math.PI * n * d;
    if (log) {
      const where = { ρ: rho, N: n, D: d, μ: central, μ_t: thick, high, Np_t: thickPowerNumber };
      log({
        symbol: 'Re',
        formula: 'ρ N D² / μ',
        substituted: `${shown(rho)} × ${shown(n)} × ${shown(d)}² / ${shown(central)}`,
        value: reynolds,
        unit: '1',
        ...(viscosity.value.newtonian ? {} : { note: 'apparent viscosity at the shear rate k_s N' }),
      });
      curve.value.explain(reynolds, log);
      log(
        formulaStep({
          symbol: 'M',
          formula: 'Np · ρ · N² · D⁵ / (2 · π)',
          where: { ...where, Np: powerNumber },
          value: torqueNm,
          unit: 'N.m',
        }),
      );
      if (!viscosity.value.newtonian) {
        log(
          formulaStep({
            symbol: 'Re_t',
            formula: 'ρ · N · D² / μ_t',
            where,
            value: thickReynolds,
            unit: '1',
            note: 'with the shear rate constant that makes the liquid thicker',
          }),
        );
        log({
          symbol: 'Np_t',
          formula: 'as Np, at Re_t',
          substituted: `Re_t = ${shown(thickReynolds)}`,
          value: thickPowerNumber,
          unit: '1',
        });
      }
      log(
        formulaStep({
          symbol: 'M_high',
          formula: 'high · Np_t · ρ · N² · D⁵ / (2 · π)',
          where,
          value: highTorqueNm,
          unit: 'N.m',
          note: `upper end of measured values: ${curve.value.constants.band.source} (${curve.value.constants.band.basis})`,
        }),
      );
      log(
        formulaStep({
          symbol: 'P',
          formula: '2 · π · N · M',
          where: { ...where, M: torqueNm },
          value: powerW,
          unit: 'W',
        }),
      );
      log(
        formulaStep({
          symbol: 'P_high',
          formula: '2 · π · N · M_high',
          where: { ...where, M_high: highTorqueNm },
          value: highPowerW,
          unit: 'W',
        }),
      );
    }
    return succeed({
      reynolds,
      powerNumber,
      torqueNm,
      highTorqueNm,
      powerW,
      highPowerW,
      tipSpeedMPerS,
    });
  },
});
