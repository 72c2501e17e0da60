import { z } from 'zod';
import { succeed } from '@flangewise/model';
import { calculation, quantity } from '../calculation.js';
import { missingInput } from '../missing-input.js';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { impellerFields, liquidFields } from './impeller-fields.js';
import { viscosityAtImpeller } from './liquid-viscosity-at-impeller.js';
import { powerCurveOf, powerCurveSources } from './power-curve.js';

const limit = (unit: string, symbol: string, description: string): z.ZodOptional<z.ZodNumber> =>
  quantity({ unit, symbol, description }, z.number().positive()).optional();

/** Speeds between which torque and power are searched [1/s]. */
const lowestSpeed = 1e-6;
const highestSpeedPerS = 1000;
/** Relative accuracy of the speed, and more steps than any smooth curve needs (about ten). */
const accuracy = 1e-13;
const mostSteps = 100;

/**
 * Speed at which an increasing load reaches its limit, by false position (Illinois) on logarithms, in which the loads
 * of stirrers are nearly straight.
 * @returns undefined where the limit is not reached at the highest speed
 */
const speedAtLimit = (load: (speedPerS: number) => number, limitValue: number): number | undefined => {
  const excess = (logSpeed: number): number => Math.log(load(Math.exp(logSpeed)) / limitValue);
  let [low, high] = [Math.log(lowestSpeed), Math.log(highestSpeedPerS)];
  let [below, above] = [excess(low), excess(high)];
  if (above < 0) return undefined;
  let lastMoved: 'low' | 'high' | 'none' = 'none';
  for (let step = 0; step < mostSteps && high - low > accuracy; step += 1) {
    const middle = (low * above - high * below) / (above - below);
    const value = excess(middle);
    if (Math.abs(value) < accuracy) return Math.exp(middle);
    if (value < 0) {
      low = middle;
      below = value;
      // An end that stands still twice loses half its weight, else false position creeps.
      if (lastMoved === 'low') above /= 2;
      lastMoved = 'low';
    } else {
      high = middle;
      above = value;
      if (lastMoved === 'high') below /= 2;
      lastMoved = 'high';
    }
  }
  return Math.exp(low);
};

/**
 * Highest speed at which the upper end of the torque and power, the tip speed and the shaft stay within their limits.
 *
 *   N = min { N : M_high(N) = M_lim;  2π N M_high(N) = P_lim;  u_lim/(π D);  N_lim }
 *
 * @param impeller and vessel as in `impellerFields`; liquid by viscosity or power law
 * @param torqueLimitNm      M_lim of coupling or motor [N·m]
 * @param powerLimitW        P_lim of the motor at the shaft [W]
 * @param tipSpeedLimitMPerS u_lim [m/s]
 * @param speedLimitPerS     N_lim of coupling, motor or shaft [1/s]
 * @returns speedPerS N [1/s]; limitedBy; highTorqueNm at that speed [N·m]
 * @range at least one limit; torque rises with speed
 * @error CALC_INVALID_INPUT without a limit or a viscosity; CALC_OUT_OF_RANGE as stirring.powerNumber, and where a
 *   limit is passed at 1e-6 1/s already
 * @source furukawa-2012; rieger-1988; beckner-smith-1966; metzner-otto-1957
 */
export const highestSpeed = calculation({
  id: 'stirring.highestSpeed',
  title: 'Highest speed within the limits',
  inputs: z.strictObject({
    ...impellerFields,
    ...liquidFields,
    torqueLimitNm: limit('N.m', 'M_lim', 'Torque that coupling or motor carries'),
    powerLimitW: limit('W', 'P_lim', 'Power that the motor gives at the shaft'),
    tipSpeedLimitMPerS: limit('m/s', 'u_lim', 'Highest tip speed'),
    speedLimitPerS: limit('1/s', 'N_lim', 'Highest speed of coupling, motor or shaft'),
  }),
  outputs: z.strictObject({
    speedPerS: quantity({ unit: '1/s', symbol: 'N', description: 'Highest speed' }),
    limitedBy: z
      .enum(['torque', 'power', 'tip speed', 'speed', 'range of the method'])
      .meta({ description: 'Limit that is reached first' }),
    highTorqueNm: quantity({ unit: 'N.m', symbol: 'M_high', description: 'Upper end of the torque there' }),
  }),
  formula: String.raw`N = \min\left\{ N_{M_{lim}},\; N_{P_{lim}},\; \frac{u_{lim}}{\pi D},\; N_{lim} \right\},\quad M_{high}(N_{M_{lim}}) = M_{lim}`,
  range:
    'at least one limit; result 1e-6 to 1000 1/s; below Re 1e-4 the laminar, above 1e8 the turbulent law goes on',
  source: [...powerCurveSources, { citation: 'metzner-otto-1957', basis: 'published' }],
  compute: (inputs, log) => {
    const curve = powerCurveOf(inputs);
    if (!curve.ok) return curve;
    const viscosity = viscosityAtImpeller(inputs, curve.value.constants);
    if (!viscosity.ok) return viscosity;
    const { at, high } = curve.value;
    const { densityKgPerM3: rho, impellerDiameterM: d } = inputs;
    const dynamic = (high * rho * d ** 5) / (2 * Math.PI);
    const torqueAt = (n: number): number =>
      dynamic * n ** 2 * at((rho * n * d ** 2) / viscosity.value.high(n));
    const { torqueLimitNm, powerLimitW, tipSpeedLimitMPerS, speedLimitPerS } = inputs;
    const powerAt = (n: number): number => 2 * Math.PI * n * torqueAt(n);
    const loads = [
      { by: 'torque', field: 'torqueLimitNm', unit: 'N·m', limitValue: torqueLimitNm, load: torqueAt },
      { by: 'power', field: 'powerLimitW', unit: 'W', limitValue: powerLimitW, load: powerAt },
    ] as const;
    const tooSmall = loads.find(({ limitValue = Infinity, load }) => load(lowestSpeed) > limitValue);
    if (tooSmall !== undefined) {
      return outOfRange({
        field: tooSmall.field,
        given: tooSmall.limitValue ?? 0,
        unit: tooSmall.unit,
        allowed: `above ${shown(tooSmall.load(lowestSpeed))} ${tooSmall.unit}, which the liquid asks at ${String(lowestSpeed)} 1/s`,
      });
    }
    const candidates = [
      ...loads.flatMap(({ by, limitValue, load }) => {
        if (limitValue === undefined) return [];
        const speed = speedAtLimit(load, limitValue);
        return [
          speed === undefined
            ? { by: 'range of the method' as const, speed: highestSpeedPerS }
            : { by, speed },
        ];
      }),
      ...(tipSpeedLimitMPerS === undefined
        ? []
        : [{ by: 'tip speed' as const, speed: tipSpeedLimitMPerS / (Math.PI * d) }]),
      ...(speedLimitPerS === undefined ? [] : [{ by: 'speed' as const, speed: speedLimitPerS }]),
    ];
    const [first, ...others] = candidates;
    if (first === undefined) {
      return missingInput(
        'torqueLimitNm',
        'give at least one of torqueLimitNm, powerLimitW, tipSpeedLimitMPerS, speedLimitPerS',
      );
    }
    const lowest = others.reduce(
      (least, candidate) => (candidate.speed < least.speed ? candidate : least),
      first,
    );
    const highTorqueNm = torqueAt(lowest.speed);
    if (log) {
      for (const { by, speed } of candidates) {
        log({
          symbol: 'N',
          formula: `highest speed by ${by}`,
          substituted: `${inputs.impeller}, D = ${shown(d)} m`,
          value: speed,
          unit: '1/s',
        });
      }
      const { speed: N, by } = lowest;
      const μ = viscosity.value.high(N);
      const Re = (rho * N * d ** 2) / μ;
      const where = { ρ: rho, N, D: d, μ, high, Np: at(Re) };
      log(formulaStep({ symbol: 'Re', formula: 'ρ · N · D² / μ', where, value: Re, unit: '1' }));
      curve.value.explain(Re, log);
      log(
        formulaStep({
          symbol: 'M_high',
          formula: 'high · Np · ρ · N² · D⁵ / (2 · π)',
          where,
          value: highTorqueNm,
          unit: 'N.m',
          note: `limited by ${by}`,
        }),
      );
    }
    return succeed({ speedPerS: lowest.speed, limitedBy: lowest.by, highTorqueNm });
  },
});
