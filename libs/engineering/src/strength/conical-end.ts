import type { StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { fromMemory, published } from '../source-reference.js';

export const conicalCodes = ['EN 13445-3', 'ASME VIII-1'] as const;
export type ConicalCode = (typeof conicalCodes)[number];

/** A cone below a cylinder, without knuckle, corroded [m, Pa]. */
export interface ConicalEnd {
  readonly code: ConicalCode;
  readonly thickness: number;
  readonly innerDiameter: number;
  readonly cylinderThickness: number;
  /** Half of the opening angle, at most that of `steepestCone`. */
  readonly halfAngleRad: number;
  readonly allowableStress: number;
  readonly jointEfficiency: number;
}

/** Largest half angle without a knuckle [°]. */
export const steepestCone: Readonly<Record<ConicalCode, number>> = { 'EN 13445-3': 60, 'ASME VIII-1': 30 };

/** The cone by itself, with s = cos α: by EN 13445-3 its mean, by ASME 0.6 of the thickness added to its radius. */
const membranes = {
  'EN 13445-3': { share: 1, formula: '2 · f · z · e · s / (D_i + e · s)', clause: 'EN 13445-3 7.6.4' },
  'ASME VIII-1': {
    share: 1.2,
    formula: '2 · f · z · e · s / (D_i + 1.2 · e · s)',
    clause: 'ASME VIII-1 UG-32(f)',
  },
} as const;

/**
 * Permissible pressure of a conical end: the lower of the cone itself and of its junction with the cylinder.
 *
 *   EN 13445-3:  P_c = 2 f z e cos α / (D_i + e cos α)
 *   ASME VIII-1: P_c = 2 S E t cos α / (D + 1.2 t cos α)
 *   P_j = 2 f e_j / (D_c β),  β = ⅓ √(D_c/e_j) tan α / (1 + 1/√cos α) − 0.15
 *
 * e_j is the thinner of cone and cylinder, D_c the mean diameter of the cylinder. The junction is by EN 13445-3 in both
 * codes; ASME compares areas there (appendix 1-5), which a designer still has to show.
 */
export const conicalEndPressure = (end: ConicalEnd, log?: StepLog): number => {
  const { thickness: e, innerDiameter: D_i, halfAngleRad: α, allowableStress: f, jointEfficiency: z } = end;
  const s = Math.cos(α);
  const { share, formula, clause } = membranes[end.code];
  const ofCone = (2 * f * z * e * s) / (D_i + share * e * s);
  const e_j = Math.min(e, end.cylinderThickness);
  const D_c = D_i + end.cylinderThickness;
  const β = (Math.sqrt(D_c / e_j) * Math.tan(α)) / (3 * (1 + 1 / Math.sqrt(s))) - 0.15;
  const atJunction = β > 0 ? (2 * f * e_j) / (D_c * β) : Infinity;
  if (log) {
    const where = { f, z, e, s, D_i, D_c, e_j, β, α };
    const note = `s = cos α; ${clause}`;
    log(formulaStep({ symbol: 's', formula: 'cos(α)', where, value: s, unit: '1', note: 'α in radians' }));
    log(formulaStep({ symbol: 'P_c', formula, where, value: ofCone, unit: 'Pa', note }));
    const junction = '√(D_c / e_j) · tan(α) / (3 · (1 + 1 / √(s))) − 0.15';
    log(
      formulaStep({
        symbol: 'β',
        formula: junction,
        where,
        value: β,
        unit: '1',
        note: 'junction, EN 13445-3 7.6.6; from memory, unverified; no limit where not above 0',
      }),
    );
    if (β > 0) {
      log(
        formulaStep({
          symbol: 'P_j',
          formula: '2 · f · e_j / (D_c · β)',
          where,
          value: atJunction,
          unit: 'Pa',
        }),
      );
    }
  }
  return Math.min(ofCone, atJunction);
};

export const conicalRange =
  'cone without knuckle, half angle 10 to 60° (EN 13445-3), 10 to 30° (ASME VIII-1); wall up to 0.16 of the outer diameter';

export const conicalSources = [
  published('asme-viii-1 UG-32(f)'),
  fromMemory('en-13445-3:2021 §7.6.4, §7.6.6'),
];
