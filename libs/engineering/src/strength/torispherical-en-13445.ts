import { type Outcome, succeed } from '@flangewise/model';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { smallestEnough } from '../smallest-enough.js';
import { knuckleFactor } from './knuckle-factor.js';
import {
  outerDiameterOf,
  thickestTorispherical,
  type TorisphericalRule,
  type TorisphericalShape,
} from './torispherical-rule.js';
import { isAtMost } from './wall-rule.js';

export interface TorisphericalLimits {
  /** Membrane stress of the crown. */
  readonly crown: number;
  /** Yielding of the knuckle. */
  readonly knuckle: number;
  /** Buckling of the knuckle; infinite where e > 0.005 D_i, where it cannot govern. */
  readonly buckling: number;
  readonly beta: number;
  readonly innerDiameter: number;
}

/**
 * Permissible pressures of a torispherical end.
 *
 *   P_s = 2 f z e / (R + 0.5 e)
 *   P_y = f e / (β (0.75 R + 0.2 D_i))
 *   P_b = 111 f_b (e / (0.75 R + 0.2 D_i))^1.5 (r / D_i)^0.825, only for e ≤ 0.005 D_i
 *
 * f_b = f. For austenitic ends f rests on Rp1.0 and f_b on Rp0.2, raised by 1.6 where the end is formed cold, so
 * a hot-formed austenitic end thinner than 0.005 D_i is to be checked with its own f_b.
 */
export const torisphericalLimits = (
  shape: TorisphericalShape,
  e: number,
  outerDiameter: number,
): TorisphericalLimits => {
  const { crownRadius: R, knuckleRadius: r, allowableStress: f, jointEfficiency: z } = shape;
  const innerDiameter = outerDiameter - 2 * e;
  const mean = 0.75 * R + 0.2 * innerDiameter;
  const beta = knuckleFactor(e / R, r / innerDiameter);
  return {
    crown: (2 * f * z * e) / (R + 0.5 * e),
    knuckle: (f * e) / (beta * mean),
    buckling:
      e > 0.005 * innerDiameter ? Infinity : 111 * f * (e / mean) ** 1.5 * (r / innerDiameter) ** 0.825,
    beta,
    innerDiameter,
  };
};

const governing = ({ crown, knuckle, buckling }: TorisphericalLimits): number =>
  Math.min(crown, knuckle, buckling);

const thinnestOverOuter = 0.001;

const checkedDiameter = (shape: TorisphericalShape): Outcome<number> => {
  const De = outerDiameterOf(shape);
  if (De === undefined) {
    return missingInput(
      'outerDiameterM',
      'EN 13445-3 needs the outer diameter where the radii are not those of DIN 28011 or DIN 28013',
    );
  }
  const { corrosion = 0 } = shape;
  const [R, r] = [shape.crownRadius - corrosion, shape.knuckleRadius - corrosion];
  if (!isAtMost(R, De)) {
    return outOfRange({
      field: 'crownRadiusM',
      given: R,
      unit: 'm',
      allowed: `at most the outer diameter (${shown(De)} m)`,
    });
  }
  return r < 0.06 * De * (1 - 1e-9) || r > 0.2 * De
    ? outOfRange({
        field: 'knuckleRadiusM',
        given: r,
        unit: 'm',
        allowed: `0.06 to 0.2 of the diameter (${shown(0.06 * De)} to ${shown(0.2 * De)} m)`,
      })
    : succeed(De);
};

/**
 * Torispherical end by EN 13445-3 clause 7.5.3.
 *
 * @range 0.001 D_e ≤ e ≤ 0.08 D_e, r from 0.06 to 0.2 D, r ≥ 2 e, R ≤ D_e
 * @source en-13445-3:2021 §7.5.3 (from memory, unverified)
 */
export const en13445Torispherical: TorisphericalRule = {
  pressure: (end, log) => {
    const checked = checkedDiameter(end);
    if (!checked.ok) return checked;
    const De = checked.value;
    const { thickness: e, crownRadius: R, knuckleRadius: r, allowableStress: f, jointEfficiency: z } = end;
    const limit = thickestTorispherical['EN 13445-3']({ outerDiameter: De, knuckleRadius: r });
    if (!isAtMost(e, limit) || !isAtMost(thinnestOverOuter * De, e)) {
      return outOfRange({
        field: 'thicknessM',
        given: e,
        unit: 'm',
        allowed: `${shown(thinnestOverOuter * De)} to ${shown(limit)} m (0.001 to 0.08 of the outer diameter, at most half the knuckle radius); beyond it take a hemispherical or flat end`,
      });
    }
    const limits = torisphericalLimits(end, e, De);
    const pressure = governing(limits);
    if (log !== undefined) {
      const { beta: β, innerDiameter: D_i } = limits;
      knuckleFactor(e / R, r / D_i, log);
      log(
        formulaStep({
          symbol: 'P_s',
          formula: '2 · f · z · e / (R + 0.5 · e)',
          where: { f, z, e, R },
          value: limits.crown,
          unit: 'Pa',
          note: 'crown membrane',
        }),
      );
      log(
        formulaStep({
          symbol: 'P_y',
          formula: 'f · e / (β · (0.75 · R + 0.2 · D_i))',
          where: { f, e, β, R, D_i },
          value: limits.knuckle,
          unit: 'Pa',
          note: 'knuckle yielding',
        }),
      );
      if (Number.isFinite(limits.buckling)) {
        log(
          formulaStep({
            symbol: 'P_b',
            formula: '111 · f · (e / (0.75 · R + 0.2 · D_i))^1.5 · (r / D_i)^0.825',
            where: { f, e, R, D_i, r },
            value: limits.buckling,
            unit: 'Pa',
            note: 'knuckle buckling',
          }),
        );
      }
    }
    return succeed(pressure);
  },
  thickness: (shape, pressure) => {
    const checked = checkedDiameter(shape);
    if (!checked.ok) return checked;
    const De = checked.value;
    const [low, high] = [
      thinnestOverOuter * De,
      thickestTorispherical['EN 13445-3']({ ...shape, outerDiameter: De }),
    ];
    const carries = (e: number): boolean => governing(torisphericalLimits(shape, e, De)) >= pressure;
    if (carries(low)) return succeed(low);
    if (!carries(high)) {
      return outOfRange({
        field: 'pressurePaGauge',
        given: pressure,
        unit: 'Pa',
        allowed: `at most ${shown(governing(torisphericalLimits(shape, high, De)))} Pa for this shape and stress; take a hemispherical or flat end`,
      });
    }
    return succeed(smallestEnough({ low, high, isEnough: carries }));
  },
};
