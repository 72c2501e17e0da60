import { type Outcome, succeed } from '@flangewise/model';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import type { TorisphericalRule, TorisphericalShape } from './torispherical-rule.js';
import { isAtMost } from './wall-rule.js';

/** M = ¼ (3 + √(L/r)). */
const shapeFactor = ({ crownRadius, knuckleRadius }: TorisphericalShape): number =>
  (3 + Math.sqrt(crownRadius / knuckleRadius)) / 4;

/** L / r of a knuckle of 6 % of the crown radius, the smallest that UG-32 allows. */
const sharpestKnuckle = 100 / 6;
/** t / L below which appendix 1-4(f) asks for a check against buckling of the knuckle. */
const thinnestOverCrown = 0.002;

const checkShape = ({ crownRadius: L, knuckleRadius: r }: TorisphericalShape): Outcome<undefined> =>
  // The last printed digit of a published radius may lie below 6 %.
  L / r > sharpestKnuckle * 1.002
    ? outOfRange({
        field: 'knuckleRadiusM',
        given: r,
        unit: 'm',
        allowed: `at least 6 % of the crown radius (${shown(0.06 * L)} m), UG-32`,
      })
    : r > L
      ? outOfRange({
          field: 'knuckleRadiusM',
          given: r,
          unit: 'm',
          allowed: `at most the crown radius (${shown(L)} m)`,
        })
      : succeed(undefined);

/**
 * Torispherical end by ASME VIII-1 appendix 1-4(d), inside radii.
 *
 *   P = 2 S E t / (L M + 0.2 t),  t = P L M / (2 S E − 0.2 P),  M = ¼ (3 + √(L/r))
 *
 * @range r from 0.06 L to L, r ≥ 3 t, t / L ≥ 0.002
 * @source asme-viii-1 UG-32, appendix 1-4(d)
 */
export const asmeTorispherical: TorisphericalRule = {
  pressure: (end, log) => {
    const shape = checkShape(end);
    if (!shape.ok) return shape;
    const { thickness: t, crownRadius: L, knuckleRadius: r, allowableStress: S, jointEfficiency: E } = end;
    if (!isAtMost(3 * t, r)) {
      return outOfRange({
        field: 'thicknessM',
        given: t,
        unit: 'm',
        allowed: `at most a third of the knuckle radius (${shown(r / 3)} m), UG-32`,
      });
    }
    if (!isAtMost(thinnestOverCrown * L, t)) {
      return outOfRange({
        field: 'thicknessM',
        given: t,
        unit: 'm',
        allowed: `at least 0.002 of the crown radius (${shown(thinnestOverCrown * L)} m); below it appendix 1-4(f) is needed`,
      });
    }
    const M = shapeFactor(end);
    const pressure = (2 * S * E * t) / (L * M + 0.2 * t);
    log?.(formulaStep({ symbol: 'M', formula: '(3 + √(L / r)) / 4', where: { L, r }, value: M, unit: '1' }));
    log?.(
      formulaStep({
        symbol: 'P',
        formula: '2 · S · E · t / (L · M + 0.2 · t)',
        where: { S, E, t, L, M },
        value: pressure,
        unit: 'Pa',
        note: 'ASME VIII-1 appendix 1-4(d)',
      }),
    );
    return succeed(pressure);
  },
  thickness: (end, pressure) => {
    const shape = checkShape(end);
    if (!shape.ok) return shape;
    const { crownRadius: L, knuckleRadius: r, allowableStress: S, jointEfficiency: E } = end;
    const denominator = 2 * S * E - 0.2 * pressure;
    const needed = denominator > 0 ? (pressure * L * shapeFactor(end)) / denominator : Infinity;
    if (!isAtMost(3 * needed, r)) {
      return outOfRange({
        field: 'pressurePaGauge',
        given: pressure,
        unit: 'Pa',
        allowed:
          'a pressure whose thickness is at most a third of the knuckle radius, UG-32; take an ellipsoidal or hemispherical end',
      });
    }
    return succeed(Math.max(needed, thinnestOverCrown * L));
  },
};
