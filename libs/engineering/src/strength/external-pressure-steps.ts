import type { StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { shown } from '../shown.js';
import type { ShellKind } from './collapse-curve.js';
import {
  type CylinderUnderExternalPressure,
  cylinderUnderExternalPressure,
} from './external-pressure-cylinder-en.js';
import {
  type ExternalLimits,
  type SphericalShell,
  sphereUnderExternalPressure,
} from './external-pressure-dished.js';

const curveNames = { cylinder: 'cylinders', dishedEnd: 'dished ends' } as const;
const circularity = { cylinder: '0.5 % of the radius', dishedEnd: '1 %' } as const;

/** From P_y and P_m by the curve to the allowable pressure, which is called by `symbol`. */
const explainCollapse = (
  { kind, symbol, safetyFactor: S }: { kind: ShellKind; symbol: string; safetyFactor: number },
  { yieldPressure: P_y, elasticInstability: P_m, lowerBoundCollapse: P_r, allowable }: ExternalLimits,
  log: StepLog,
): void => {
  const where = { P_y, P_m, k: P_r / P_y, P_r, S };
  log({
    symbol: 'k',
    formula: 'curve(P_m / P_y)',
    substituted: `curve(${shown(P_m / P_y)})`,
    value: where.k,
    unit: '1',
    note: `table 8.5-5, ${curveNames[kind]}; from memory, unverified`,
  });
  log(formulaStep({ symbol: 'P_r', formula: 'k · P_y', where, value: P_r, unit: 'Pa' }));
  log(
    formulaStep({
      symbol,
      formula: 'P_r / S',
      where,
      value: allowable,
      unit: 'Pa',
      note: `circular within ${circularity[kind]}`,
    }),
  );
};

/** The steps of a cylinder, EN 13445-3 8.5.2. */
export const explainCylinder = (shell: CylinderUnderExternalPressure, symbol: string, log: StepLog): void => {
  const { elasticLimit: σ_e, elasticModulus: E, thickness: e, outerDiameter: D_e } = shell;
  const { unsupportedLength: L, safetyFactor } = shell;
  const limits = cylinderUnderExternalPressure(shell);
  const { lobes: n, strain: ε, yieldPressure, elasticInstability } = limits;
  const R = (D_e - e) / 2;
  const Z = (Math.PI * R) / L;
  const where = { σ_e, E, e, D_e, D_i: D_e - 2 * e, R, L, Z, n, ε };
  const steps = [
    ['R', '(D_e − e) / 2', R, 'm', 'mean radius'],
    [
      'P_y',
      'min(σ_e · e / R, σ_e · (D_e² − D_i²) / (2 · D_e²))',
      yieldPressure,
      'Pa',
      'the second is Lamé at the bore',
    ],
    ['Z', 'π · R / L', Z, '1'],
    [
      'ε',
      '(1 / (n² / Z² + 1)² + e² / (12 · R² · 0.91) · (n² − 1 + Z²)²) / (n² − 1 + Z² / 2)',
      ε,
      '1',
      `least over the number of lobes, n = ${String(n)}; eq. 8.5.2-6`,
    ],
    ['P_m', 'E · e · ε / R', elasticInstability, 'Pa'],
  ] as const;
  for (const [name, formula, value, unit, note] of steps) {
    log(formulaStep({ symbol: name, formula, where, value, unit, note }));
  }
  explainCollapse({ kind: 'cylinder', symbol, safetyFactor }, limits, log);
};

/** The steps of a sphere, EN 13445-3 8.7. */
export const explainSphere = (shell: SphericalShell, symbol: string, log: StepLog): void => {
  const { radius: R, thickness: e, elasticModulus: E, elasticLimit: σ_e, safetyFactor } = shell;
  const limits = sphereUnderExternalPressure(shell);
  const where = { σ_e, E, e, R };
  log(
    formulaStep({
      symbol: 'P_y',
      formula: '2 · σ_e · e / R',
      where,
      value: limits.yieldPressure,
      unit: 'Pa',
      note: 'outer crown radius R',
    }),
  );
  log(
    formulaStep({
      symbol: 'P_m',
      formula: '1.21 · E · e² / R²',
      where,
      value: limits.elasticInstability,
      unit: 'Pa',
    }),
  );
  explainCollapse({ kind: 'dishedEnd', symbol, safetyFactor }, limits, log);
};
