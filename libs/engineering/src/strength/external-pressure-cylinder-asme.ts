import { type Outcome, type Step, succeed } from '@flangewise/model';
import { formulaStep } from '../formula-step.js';
import { missingInput } from '../missing-input.js';

export interface AsmeExternalCylinder {
  readonly outerDiameter: number;
  readonly thickness: number;
  /** Chart factor B at the temperature. */
  readonly factorB: number;
  /** S of UG-28(c)(2)(b): the lesser of twice the allowable stress and 0.9 of the yield strength. */
  readonly stress: number | undefined;
}

/**
 * External pressure on a cylinder with the chart factor B given.
 *
 *   D_o/t ≥ 10: P_a = 4 B / (3 D_o/t)
 *   D_o/t < 10: P_a = min((2.167/(D_o/t) − 0.0833) B, 2 S/(D_o/t) (1 − 1/(D_o/t)))
 *
 * @error CALC_INVALID_INPUT where D_o/t < 10 and the stress S is not given
 * @source asme-viii-1 UG-28(c)(1), (c)(2)
 */
export const asmeExternalCylinder = (
  { outerDiameter: D_o, thickness: t, factorB: B, stress: S }: AsmeExternalCylinder,
  log?: (step: Step) => void,
): Outcome<number> => {
  const ratio = D_o / t;
  if (ratio >= 10) {
    const pressure = (4 * B) / (3 * ratio);
    log?.(
      formulaStep({
        symbol: 'P_a',
        formula: '4 · B / (3 · D_o / t)',
        where: { B, D_o, t },
        value: pressure,
        unit: 'Pa',
        note: 'UG-28(c)(1)',
      }),
    );
    return succeed(pressure);
  }
  if (S === undefined) {
    return missingInput(
      'externalStressPa',
      'UG-28(c)(2) needs it where outer diameter over thickness is below 10: the lesser of twice the allowable stress and 0.9 of the yield strength [Pa]',
    );
  }
  const pressure = Math.min((2.167 / ratio - 0.0833) * B, ((2 * S) / ratio) * (1 - 1 / ratio));
  log?.(
    formulaStep({
      symbol: 'P_a',
      formula: 'min((2.167 · t / D_o − 0.0833) · B, 2 · S · t / D_o · (1 − t / D_o))',
      where: { B, D_o, t, S },
      value: pressure,
      unit: 'Pa',
      note: 'UG-28(c)(2), D_o/t < 10',
    }),
  );
  return succeed(pressure);
};
