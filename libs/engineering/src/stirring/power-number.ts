import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { impellerFields } from './impeller-fields.js';
import { powerCurveOf, powerCurveSources } from './power-curve.js';

const regimeOf = (reynolds: number): 'laminar' | 'transition' | 'turbulent' =>
  reynolds <= 10 ? 'laminar' : reynolds < 10_000 ? 'transition' : 'turbulent';

/**
 * Power number of an impeller in its vessel from laminar to turbulent flow, with the band of measured values.
 *
 *   turbines, paddles: Kamei–Hiraoka with baffles blended in (kamei-hiraoka.ts)
 *   propellers, hydrofoils, hollow shaft turbines: Np = K_L/Re + Np_t
 *   anchors: the same with K_L = 82 (c/T)^(−0.25); ribbons with K_L by Rieger
 *
 * @param impeller type; diameters, heights [m], blades and baffles as in `impellerFields`
 * @param reynolds Re [-]
 * @returns powerNumber Np, lowPowerNumber, highPowerNumber [-]; laminarConstant Np·Re at low Re [-]; regime
 * @range 1e-4 ≤ Re ≤ 1e8; D/T 0.1 to 0.9, anchors and ribbons 0.7 to 0.995
 * @error CALC_OUT_OF_RANGE outside the range
 * @source furukawa-2012; rieger-1988; beckner-smith-1966; mccabe-smith-harriott-5 table 9.3
 */
export const powerNumber = calculation({
  id: 'stirring.powerNumber',
  title: 'Power number of an impeller',
  inputs: z.strictObject({
    ...impellerFields,
    reynolds: quantity(
      { unit: '1', symbol: 'Re', description: 'Reynolds number of the impeller' },
      z.number().min(1e-4).max(1e8),
    ),
  }),
  outputs: z.strictObject({
    powerNumber: quantity({ unit: '1', symbol: 'Np', description: 'Power number, central value' }),
    lowPowerNumber: quantity({ unit: '1', symbol: 'Np_low', description: 'Low end of measured values' }),
    highPowerNumber: quantity({ unit: '1', symbol: 'Np_high', description: 'High end of measured values' }),
    laminarConstant: quantity({ unit: '1', symbol: 'K_L', description: 'Np · Re in laminar flow' }),
    regime: z
      .enum(['laminar', 'transition', 'turbulent'])
      .meta({ description: 'Laminar up to Re 10, turbulent from 10 000' }),
  }),
  formula: String.raw`Np = Np_0(Re) + \frac{Np_b - Np_0}{1 + 500/Re}\;\text{(blades)},\quad Np = \frac{K_L}{Re} + Np_t\;\text{(others)}`,
  range: '1e-4 ≤ Re ≤ 1e8; D/T 0.1 to 0.9, anchors and ribbons 0.7 to 0.995; one impeller on the shaft',
  source: powerCurveSources,
  compute: ({ reynolds, ...geometry }, log) => {
    const curve = powerCurveOf(geometry);
    if (!curve.ok) return curve;
    const { at, low, high, laminarConstant, explain, constants } = curve.value;
    const central = at(reynolds);
    const [lowPowerNumber, highPowerNumber] = [low * central, high * central];
    if (log) {
      explain(reynolds, log);
      const where = { low, high, Np: central };
      const note = `${constants.band.source} (${constants.band.basis})`;
      log(
        formulaStep({ symbol: 'Np_low', formula: 'low · Np', where, value: lowPowerNumber, unit: '1', note }),
      );
      log(
        formulaStep({
          symbol: 'Np_high',
          formula: 'high · Np',
          where,
          value: highPowerNumber,
          unit: '1',
          note,
        }),
      );
    }
    return succeed({
      powerNumber: central,
      lowPowerNumber,
      highPowerNumber,
      laminarConstant,
      regime: regimeOf(reynolds),
    });
  },
});
