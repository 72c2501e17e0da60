import { type Outcome, succeed } from '@flangewise/model';
import { formulaStep } from '../formula-step.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import { smallestEnough } from '../smallest-enough.js';
import {
  thickestTorispherical,
  type TorisphericalEnd,
  type TorisphericalRule,
  type TorisphericalShape,
} from './torispherical-rule.js';
import { isAtMost } from './wall-rule.js';

interface Proportions {
  /** r / R */
  readonly knuckleOverCrown: number;
  /** R / D_a */
  readonly crownOverOuter: number;
  readonly beta: (thicknessOverOuter: number) => number;
}

/** β of an end without openings in the knuckle. The fits are from memory, unverified. */
const proportions: readonly Proportions[] = [
  { knuckleOverCrown: 0.1, crownOverOuter: 1, beta: (Y) => 1.9 + 0.0325 / Y ** 0.7 },
  { knuckleOverCrown: 0.1925, crownOverOuter: 0.8, beta: (Y) => 1.55 + 0.0255 / Y ** 0.625 },
];

interface KnownShape extends Proportions {
  readonly outer: number;
}

const known = (shape: TorisphericalShape): Outcome<KnownShape> => {
  const { corrosion = 0 } = shape;
  const given = (shape.knuckleRadius - corrosion) / (shape.crownRadius - corrosion);
  const match = proportions.find(({ knuckleOverCrown }) => Math.abs(given / knuckleOverCrown - 1) <= 0.01);
  if (match === undefined) {
    return outOfRange({
      field: 'knuckleRadiusM',
      given: shape.knuckleRadius,
      unit: 'm',
      allowed:
        '0.1 of the crown radius (DIN 28011) or 0.1925 of it (DIN 28013): AD 2000 B3 has shape factors for these',
    });
  }
  return succeed({ ...match, outer: shape.outerDiameter ?? shape.crownRadius / match.crownOverOuter });
};

/** The lower of knuckle, 4 (K/S) v s / (D_a β), and crown as a sphere, 4 (K/S) v s / (2 R + s). */
const permissible = (shape: TorisphericalShape, { beta, outer }: KnownShape, s: number): number => {
  const stress = 4 * shape.allowableStress * shape.jointEfficiency * s;
  return Math.min(stress / (outer * beta(s / outer)), stress / (2 * shape.crownRadius + s));
};

const thinnest = 0.001;
const thickest = (outerDiameter: number): number =>
  thickestTorispherical['AD 2000']({ outerDiameter, knuckleRadius: 0 });

const explain = (end: TorisphericalEnd, shape: KnownShape) => {
  const { allowableStress: f, jointEfficiency: v, thickness: s } = end;
  const β = shape.beta(s / shape.outer);
  return formulaStep({
    symbol: 'P',
    formula: 'min(4 · f · v · s / (D_a · β), 4 · f · v · s / (2 · R + s))',
    where: { f, v, s, D_a: shape.outer, β, R: end.crownRadius },
    value: permissible(end, shape, s),
    unit: 'Pa',
    note: 'AD 2000 B3, f = K/S; β from memory, unverified',
  });
};

/**
 * Torispherical end by AD 2000 B3, without openings in the knuckle, DIN 28011 or DIN 28013 proportions.
 *
 *   s = D_a p β / (4 (K/S) v),  β = 1.9 + 0.0325 / Y^0.7 or 1.55 + 0.0255 / Y^0.625,  Y = s / D_a
 *
 * @range 0.001 ≤ s / D_a ≤ 0.1
 * @source ad-2000-b3 (formula read in a secondary source; β from memory, unverified)
 */
export const ad2000Torispherical: TorisphericalRule = {
  pressure: (end, log) => {
    const shape = known(end);
    if (!shape.ok) return shape;
    const { outer } = shape.value;
    if (!isAtMost(thinnest * outer, end.thickness) || !isAtMost(end.thickness, thickest(outer))) {
      return outOfRange({
        field: 'thicknessM',
        given: end.thickness,
        unit: 'm',
        allowed: `${shown(thinnest * outer)} to ${shown(thickest(outer))} m (0.001 to 0.1 of the outer diameter)`,
      });
    }
    log?.(explain(end, shape.value));
    return succeed(permissible(end, shape.value, end.thickness));
  },
  thickness: (end, pressure) => {
    const shape = known(end);
    if (!shape.ok) return shape;
    const [low, high] = [thinnest * shape.value.outer, thickest(shape.value.outer)];
    const carries = (s: number): boolean => permissible(end, shape.value, s) >= pressure;
    if (carries(low)) return succeed(low);
    if (!carries(high)) {
      return outOfRange({
        field: 'pressurePaGauge',
        given: pressure,
        unit: 'Pa',
        allowed: `at most ${shown(permissible(end, shape.value, high))} Pa for this shape and stress`,
      });
    }
    return succeed(smallestEnough({ low, high, isEnough: carries }));
  },
};
