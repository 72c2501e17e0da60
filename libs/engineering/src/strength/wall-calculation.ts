import { z } from 'zod';
import { type CalculationError, type Outcome, succeed } from '@flangewise/model';
import type { StepLog } from '../calculation.js';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';
import { outOfRange } from '../out-of-range.js';
import { shown } from '../shown.js';
import {
  allowableStressField,
  codeField,
  jointEfficiencyField,
  length,
  type PressureCode,
  pressureField,
  thicknessField,
} from './pressure-fields.js';
import { branchNote, type WallAnswer, type WallLimit, type WallRule } from './wall-rule.js';

const commonFields = {
  code: codeField,
  innerRadiusM: length('R', 'Inner radius, corroded; or give the outer diameter').optional(),
  outerDiameterM: length('D_e', 'Outer diameter; or give the inner radius').optional(),
  allowableStressPa: allowableStressField,
  jointEfficiency: jointEfficiencyField,
};

export const wallThicknessInputs = z.strictObject({ ...commonFields, pressurePaGauge: pressureField });
export const wallPressureInputs = z.strictObject({ ...commonFields, thicknessM: thicknessField });

type WallRules = Readonly<Record<PressureCode, WallRule>>;
interface Size {
  readonly innerRadiusM?: number | undefined;
  readonly outerDiameterM?: number | undefined;
}

/** Outer diameter up to which AD 2000 B1 treats a shell as a tube [m]. */
const smallTubeDiameter = 0.2;

const hasOneSize = ({ innerRadiusM, outerDiameterM }: Size): boolean =>
  (innerRadiusM === undefined) !== (outerDiameterM === undefined);

const oneSize = (): ReturnType<typeof missingInput> =>
  missingInput('innerRadiusM', 'give either innerRadiusM or outerDiameterM, not both');

/** What a shell has to carry [Pa]; `stress` is f z. */
export interface WallDemand {
  readonly code: PressureCode;
  readonly pressure: number;
  readonly stress: number;
}

/** The diameter ratio that a code asks for. `outerDiameter` gives the outer diameter of a ratio [m]. */
export const wallNeed = (
  rules: WallRules,
  { code, pressure, stress }: WallDemand,
  outerDiameter: (diameterRatio: number) => number,
): Outcome<WallAnswer> => {
  const needed: Outcome<WallAnswer, WallLimit> = rules[code].diameterRatio(
    pressure / stress,
    (k) => outerDiameter(k) <= smallTubeDiameter,
  );
  if (needed.ok) return needed;
  const { highest, advice } = needed.error;
  return outOfRange({
    field: 'pressurePaGauge',
    given: pressure,
    unit: 'Pa',
    allowed: `up to ${shown(highest * stress)} Pa at this stress by ${code}; ${advice}`,
  });
};

/**
 * Required thickness of a round shell from inner radius or outer diameter.
 * @error CALC_INVALID_INPUT without one size, CALC_OUT_OF_RANGE where the code's last formula ends
 */
export const wallThickness = (
  rules: WallRules,
  inputs: z.output<typeof wallThicknessInputs>,
  log?: StepLog,
): Outcome<{ thicknessM: number }> => {
  if (!hasOneSize(inputs)) return oneSize();
  const { code, pressurePaGauge: P, innerRadiusM, outerDiameterM = 0, allowableStressPa: f } = inputs;
  const { jointEfficiency } = inputs;
  const innerDiameter = innerRadiusM === undefined ? undefined : 2 * innerRadiusM;
  const needed = wallNeed(rules, { code, pressure: P, stress: f * jointEfficiency }, (k) =>
    innerDiameter === undefined ? outerDiameterM : innerDiameter * k,
  );
  if (!needed.ok) return needed;
  const { value: k, branch } = needed.value;
  const thicknessM =
    innerDiameter === undefined ? (outerDiameterM * (1 - 1 / k)) / 2 : (innerDiameter * (k - 1)) / 2;
  log?.(
    formulaStep({
      symbol: 'e',
      formula: innerDiameter === undefined ? branch.thicknessFromOuter : branch.thicknessFromInner,
      where: { P, f, z: jointEfficiency, D_i: innerDiameter ?? 0, D_e: outerDiameterM },
      value: thicknessM,
      unit: 'm',
      note: branchNote(branch),
    }),
  );
  return succeed({ thicknessM });
};

/** A shell of known size [m]. */
export interface Wall {
  readonly code: PressureCode;
  readonly innerDiameter: number;
  readonly thickness: number;
}

/** The answer of a code for a wall. A wall beyond the code's last formula is an error on `field`. */
export const wallLoad = (
  rules: WallRules,
  { code, innerDiameter, thickness }: Wall,
  field: string,
): Outcome<WallAnswer> => {
  const outerDiameter = innerDiameter + 2 * thickness;
  const carried: Outcome<WallAnswer, WallLimit> = rules[code].loadRatio(
    outerDiameter / innerDiameter,
    outerDiameter <= smallTubeDiameter,
  );
  return carried.ok ? carried : tooThick({ code, innerDiameter, thickness }, carried.error, field);
};

const tooThick = (
  { code, innerDiameter, thickness }: Wall,
  { highest, advice }: WallLimit,
  field: string,
): { readonly ok: false; readonly error: CalculationError } =>
  outOfRange({
    field,
    given: thickness,
    unit: 'm',
    allowed: `up to ${shown((innerDiameter * (highest - 1)) / 2)} m at this bore by ${code}; ${advice}`,
  });

/**
 * Permissible pressure of a round shell from inner radius or outer diameter.
 * @error CALC_INVALID_INPUT without one size, CALC_OUT_OF_RANGE without a bore or where the last formula ends
 */
export const wallPressure = (
  rules: WallRules,
  inputs: z.output<typeof wallPressureInputs>,
  log?: StepLog,
): Outcome<{ pressurePaGauge: number }> => {
  if (!hasOneSize(inputs)) return oneSize();
  const { code, thicknessM: e, innerRadiusM, outerDiameterM = 0, allowableStressPa: f } = inputs;
  const { jointEfficiency } = inputs;
  const innerDiameter = innerRadiusM === undefined ? outerDiameterM - 2 * e : 2 * innerRadiusM;
  if (innerDiameter <= 0) {
    return outOfRange({
      field: 'thicknessM',
      given: e,
      unit: 'm',
      allowed: `less than half of outerDiameterM (${shown(outerDiameterM / 2)} m)`,
    });
  }
  const carried = wallLoad(rules, { code, innerDiameter, thickness: e }, 'thicknessM');
  if (!carried.ok) return carried;
  const { value: loadRatio, branch } = carried.value;
  const pressurePaGauge = loadRatio * f * jointEfficiency;
  log?.(
    formulaStep({
      symbol: 'P',
      formula: branch.pressure,
      where: { f, z: jointEfficiency, e, D_i: innerDiameter },
      value: pressurePaGauge,
      unit: 'Pa',
      note: branchNote(branch),
    }),
  );
  return succeed({ pressurePaGauge });
};
