import { type Outcome, type Step, succeed } from '@flangewise/model';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { smallestEnough } from '../smallest-enough.js';
import { fromMemory, published } from '../source-reference.js';
import { torisphericalLimits } from './torispherical-en-13445.js';
import { isAtMost } from './wall-rule.js';

/** A 2:1 semi-ellipsoidal end [m, Pa]. */
export interface EllipsoidalEnd {
  readonly innerDiameter: number;
  readonly allowableStress: number;
  readonly jointEfficiency: number;
}

interface EllipsoidalRule {
  pressure(end: EllipsoidalEnd, thickness: number, log?: (step: Step) => void): Outcome<number>;
  thickness(end: EllipsoidalEnd, pressure: number): Outcome<number>;
}

export const ellipsoidalCodes = ['EN 13445-3', 'ASME VIII-1'] as const;

/** t / L below which UG-32 asks for appendix 1-4(f), with L = 0.9 D. */
const asmeThinnest = 0.0018;

/**
 *   P = 2 S E t / (D + 0.2 t),  t = P D / (2 S E − 0.2 P)
 *
 * @range t / D ≥ 0.0018, t ≤ D / 4
 * @source asme-viii-1 UG-32(d)
 */
const asme: EllipsoidalRule = {
  pressure: ({ innerDiameter: D, allowableStress: S, jointEfficiency: E }, t, log) => {
    if (!isAtMost(asmeThinnest * D, t) || !isAtMost(t, D / 4)) {
      return outOfRange({
        field: 'thicknessM',
        given: t,
        unit: 'm',
        allowed: `${shown(asmeThinnest * D)} to ${shown(D / 4)} m (0.0018 to 0.25 of the inner diameter)`,
      });
    }
    const pressure = (2 * S * E * t) / (D + 0.2 * t);
    log?.(
      formulaStep({
        symbol: 'P',
        formula: '2 · S · E · t / (D + 0.2 · t)',
        where: { S, E, t, D },
        value: pressure,
        unit: 'Pa',
        note: 'ASME VIII-1 UG-32(d)',
      }),
    );
    return succeed(pressure);
  },
  thickness: ({ innerDiameter: D, allowableStress: S, jointEfficiency: E }, pressure) => {
    const denominator = 2 * S * E - 0.2 * pressure;
    const needed = denominator > 0 ? (pressure * D) / denominator : Infinity;
    return isAtMost(needed, D / 4)
      ? succeed(Math.max(needed, asmeThinnest * D))
      : outOfRange({
          field: 'pressurePaGauge',
          given: pressure,
          unit: 'Pa',
          allowed:
            'a pressure whose thickness is at most a quarter of the inner diameter; take a hemispherical end',
        });
  },
};

/** Clause 7.5.4: an ellipsoid counts as a torisphere; for K = 2: r = D_i (0.5/K − 0.08), R = D_i (0.44 K + 0.02). */
const asTorisphere = ({ innerDiameter, allowableStress, jointEfficiency }: EllipsoidalEnd) => ({
  crownRadius: 0.9 * innerDiameter,
  knuckleRadius: 0.17 * innerDiameter,
  allowableStress,
  jointEfficiency,
});

const governing = (end: EllipsoidalEnd, e: number): number => {
  const { crown, knuckle, buckling } = torisphericalLimits(asTorisphere(end), e, end.innerDiameter + 2 * e);
  return Math.min(crown, knuckle, buckling);
};

/** 0.001 D_e ≤ e ≤ 0.08 D_e, from the inside. */
const enThinnest = 0.001 / (1 - 2 * 0.001);
const enThickest = 0.08 / (1 - 2 * 0.08);

/** @source en-13445-3:2021 §7.5.4 (from memory, unverified) */
const en: EllipsoidalRule = {
  pressure: (end, e, log) => {
    const { innerDiameter: Di } = end;
    if (!isAtMost(enThinnest * Di, e) || !isAtMost(e, enThickest * Di)) {
      return outOfRange({
        field: 'thicknessM',
        given: e,
        unit: 'm',
        allowed: `${shown(enThinnest * Di)} to ${shown(enThickest * Di)} m (0.001 to 0.08 of the outer diameter)`,
      });
    }
    const shape = asTorisphere(end);
    const limits = torisphericalLimits(shape, e, Di + 2 * e);
    const pressure = governing(end, e);
    log?.({
      symbol: 'P',
      formula: 'min(2 f z e/(R + 0.5 e), f e/(β (0.75 R + 0.2 D_i)), P_b)',
      substituted: `min(${shown(limits.crown)}, ${shown(limits.knuckle)}${Number.isFinite(limits.buckling) ? `, ${shown(limits.buckling)}` : ''})`,
      value: pressure,
      unit: 'Pa',
      note: `EN 13445-3 7.5.4, as a torisphere of R = ${shown(shape.crownRadius)} m, r = ${shown(shape.knuckleRadius)} m, β = ${shown(limits.beta)}; from memory, unverified`,
    });
    return succeed(pressure);
  },
  thickness: (end, pressure) => {
    const [low, high] = [enThinnest * end.innerDiameter, enThickest * end.innerDiameter];
    const carries = (e: number): boolean => governing(end, e) >= pressure;
    if (carries(low)) return succeed(low);
    return carries(high)
      ? succeed(smallestEnough({ low, high, isEnough: carries }))
      : outOfRange({
          field: 'pressurePaGauge',
          given: pressure,
          unit: 'Pa',
          allowed: `at most ${shown(governing(end, high))} Pa for this size and stress; take a hemispherical end`,
        });
  },
};

export const ellipsoidalRules: Readonly<Record<(typeof ellipsoidalCodes)[number], EllipsoidalRule>> = {
  'EN 13445-3': en,
  'ASME VIII-1': asme,
};

export const ellipsoidalSources = [
  published('asme-viii-1 UG-32(d)'),
  fromMemory('en-13445-3:2021 §7.5.4'),
] as const;

export const ellipsoidalRange =
  'ASME VIII-1: 0.0018 ≤ t/D ≤ 0.25; EN 13445-3: 0.001 ≤ e/De ≤ 0.08; AD 2000 has no rule for it here';

/** The thickest end that each code's formula reaches, from the inner diameter [m]. */
export const thickestEllipsoidal: Readonly<
  Record<(typeof ellipsoidalCodes)[number], (innerDiameter: number) => number>
> = {
  'EN 13445-3': (innerDiameter) => enThickest * innerDiameter,
  'ASME VIII-1': (innerDiameter) => innerDiameter / 4,
};
