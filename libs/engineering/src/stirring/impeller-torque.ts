import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
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
  range: 'as stirring.powerNumber: 1e-4 ≤ Re ≤ 1e8; one impeller on the shaft',
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
    const highTorqueNm = high * (thick === central ? powerNumber : at((rho * n * d ** 2) / thick)) * dynamic;
    const turns = 2 * Math.PI * n;
    const tipSpeedMPerS = Math.PI * n * d;
    if (log) {
      log({
        symbol: 'Re',
        formula: 'ρ N D² / μ',
        substituted: `${shown(rho)} × ${shown(n)} × ${shown(d)}² / ${shown(central)}`,
        value: reynolds,
        unit: '1',
        ...(viscosity.value.newtonian ? {} : { note: 'apparent viscosity at the shear rate k_s N' }),
      });
      log({
        symbol: 'Np',
        formula: curve.value.formula,
        substituted: `${inputs.impeller}, Re = ${shown(reynolds)}`,
        value: powerNumber,
        unit: '1',
      });
      log({
        symbol: 'M',
        formula: 'Np ρ N² D⁵ / (2π)',
        substituted: `${shown(powerNumber)} × ${shown(rho)} × ${shown(n)}² × ${shown(d)}⁵ / (2π)`,
        value: torqueNm,
        unit: 'N.m',
      });
      log({
        symbol: 'M_high',
        formula: 'upper end of measured values',
        substituted: `${shown(high)} × Np at ${shown(thick)} Pa·s × ${shown(dynamic)}`,
        value: highTorqueNm,
        unit: 'N.m',
        note: `${curve.value.constants.band.source} (${curve.value.constants.band.basis})`,
      });
      log({
        symbol: 'P',
        formula: '2π N M',
        substituted: `2π × ${shown(n)} × ${shown(torqueNm)}`,
        value: turns * torqueNm,
        unit: 'W',
      });
    }
    return succeed({
      reynolds,
      powerNumber,
      torqueNm,
      highTorqueNm,
      powerW: turns * torqueNm,
      highPowerW: turns * highTorqueNm,
      tipSpeedMPerS,
    });
  },
});
