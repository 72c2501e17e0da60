import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { conicalPressure } from './conical-pressure.js';
import { conicalThickness } from './conical-thickness.js';
import { vesselRating } from './vessel-rating.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

type Inputs = Parameters<typeof evaluate<typeof conicalPressure.inputs, typeof conicalPressure.outputs>>[1];

const cone: Omit<Inputs, 'code' | 'thicknessM'> = {
  innerDiameterM: 0.3,
  coneHalfAngleDeg: 30,
  cylinderThicknessM: 0.012,
  allowableStressPa: 112e6,
  jointEfficiency: 0.85,
};
const codes = ['EN 13445-3', 'ASME VIII-1'] as const;

const pressureOf = (inputs: Partial<Inputs> & Pick<Inputs, 'code' | 'thicknessM'>): number =>
  valueOf(evaluate(conicalPressure, { ...cone, ...inputs })).pressurePaGauge;
const thicknessOf = (inputs: object): number =>
  valueOf(evaluate(conicalThickness, { ...cone, ...inputs } as never)).thicknessM;

describe('a conical end', () => {
  it('carries by UG-32(f) 2 S E t cos α / (D + 1.2 t cos α), by 7.6.4 2 f z e cos α / (D_i + e cos α)', () => {
    // t cos α = 12 × 0.866 025 4 = 10.392 305 mm
    expect(
      pressureOf({ code: 'ASME VIII-1', thicknessM: 0.012 }) / ((2 * 112e6 * 0.85 * 10.392305) / 312.470766),
    ).toBeCloseTo(1, 7);
    expect(
      pressureOf({ code: 'EN 13445-3', thicknessM: 0.012 }) / ((2 * 112e6 * 0.85 * 10.392305) / 310.392305),
    ).toBeCloseTo(1, 7);
  });

  it('needs by UG-32(f) t = P D / (2 cos α (S E − 0.6 P)), by 7.6.4 e = P D_i / ((2 f z − P) cos α)', () => {
    // P = 4 MPa: 4 × 300 / (2 × 0.8660254 × (95.2 − 2.4)) = 7.465736 mm; 4 × 300 / (186.4 × 0.8660254) = 7.433694 mm
    const given = { pressurePaGauge: 4e6, cylinderThicknessM: 0.03 };
    expect(thicknessOf({ code: 'ASME VIII-1', ...given })).toBeCloseTo(0.007465736, 8);
    expect(thicknessOf({ code: 'EN 13445-3', ...given })).toBeCloseTo(0.007433694, 8);
    expect(thicknessOf({ code: 'EN 13445-3', pressurePaGauge: 0 })).toBe(0);
  });

  it('has the hoop stress of a thin cone, P r / (t cos α), in both codes', () => {
    for (const code of codes) {
      const pressure = pressureOf({ code, thicknessM: 0.0003, coneHalfAngleDeg: 10, jointEfficiency: 1 });
      const stress = (pressure * 0.15) / (0.0003 * Math.cos(Math.PI / 18));
      expect(Math.abs(stress / 112e6 - 1)).toBeLessThan(0.002);
    }
  });

  it('is held by a thin cylinder at its junction, whatever its own wall', () => {
    // As in the test of the formula: e_j 2 mm, D_c 302 mm, 60°: β = 2.788 679.
    const thin = { code: 'EN 13445-3', coneHalfAngleDeg: 60, cylinderThicknessM: 0.002 } as const;
    const junction = (2 * 112e6 * 0.002) / (0.302 * 2.788679);
    for (const thicknessM of [0.012, 0.03]) {
      expect(pressureOf({ ...thin, thicknessM }) / junction).toBeCloseTo(1, 6);
    }
    expect(evaluate(conicalThickness, { ...cone, ...thin, pressurePaGauge: 1.1 * junction })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'pressurePaGauge' },
    });
  });

  it('takes the wall of the cone for that of the cylinder where none is given', () => {
    const { cylinderThicknessM: _none, ...alone } = cone;
    const inputs = { ...alone, code: 'EN 13445-3', thicknessM: 0.004 } as const;
    expect(valueOf(evaluate(conicalPressure, inputs)).pressurePaGauge).toBe(
      pressureOf({ ...inputs, cylinderThicknessM: 0.004 }),
    );
  });

  it('has thickness and pressure as inverses, and falls with the angle', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...codes),
        fc.double({ min: 1e4, max: 5e6, noNaN: true }),
        fc.double({ min: 10, max: 29, noNaN: true }),
        (code, pressurePaGauge, coneHalfAngleDeg) => {
          const given = { code, coneHalfAngleDeg, cylinderThicknessM: 0.05 };
          const thicknessM = thicknessOf({ ...given, pressurePaGauge });
          expect(pressureOf({ ...given, thicknessM }) / pressurePaGauge).toBeCloseTo(1, 6);
          expect(pressureOf({ ...given, thicknessM, coneHalfAngleDeg: coneHalfAngleDeg + 1 })).toBeLessThan(
            pressurePaGauge,
          );
        },
      ),
    );
  });

  it.each([
    ['EN 13445-3', 60, true],
    ['EN 13445-3', 60.1, false],
    ['ASME VIII-1', 30, true],
    ['ASME VIII-1', 30.1, false],
  ] as const)('by %s takes a half angle of %d°: %s', (code, coneHalfAngleDeg, allowed) => {
    const outcomes = [
      evaluate(conicalPressure, { ...cone, code, coneHalfAngleDeg, thicknessM: 0.012 }),
      evaluate(conicalThickness, { ...cone, code, coneHalfAngleDeg, pressurePaGauge: 1e5 }),
    ];
    for (const outcome of outcomes) {
      expect(outcome.ok).toBe(allowed);
      expect(outcome.ok || outcome.error.field).toBe(allowed ? true : 'coneHalfAngleDeg');
    }
  });

  it('ends at 0.16 of the outer diameter', () => {
    // e = 0.16 (0.3 + 2 e) → e = 0.048 / 0.68
    expect(evaluate(conicalPressure, { ...cone, code: 'EN 13445-3', thicknessM: 0.048 / 0.68 }).ok).toBe(
      true,
    );
    expect(evaluate(conicalPressure, { ...cone, code: 'EN 13445-3', thicknessM: 0.0706 })).toMatchObject({
      ok: false,
      error: { field: 'thicknessM' },
    });
  });

  it.each([
    ['without a limit at the junction', 'EN 13445-3', 10, 0.05, ['s', 'P_c', 'β']],
    ['with one', 'EN 13445-3', 60, 0.012, ['s', 'P_c', 'β', 'P_j']],
    ['by ASME', 'ASME VIII-1', 30, 0.012, ['s', 'P_c', 'β', 'P_j']],
  ] as const)('can be redone %s', (_words, code, coneHalfAngleDeg, thicknessM, symbols) => {
    const { steps } = valueOf(
      evaluateWithEvidence(conicalPressure, {
        ...cone,
        code,
        coneHalfAngleDeg,
        thicknessM,
        cylinderThicknessM: thicknessM,
      }),
    );
    expect(steps.map(({ symbol }) => symbol)).toEqual(symbols);
    expect(stepFaults(steps)).toEqual([]);
  });

  it('shows a thickness with the pressure that it carries', () => {
    const { steps } = valueOf(
      evaluateWithEvidence(conicalThickness, { ...cone, code: 'ASME VIII-1', pressurePaGauge: 4e6 }),
    );
    expect(steps[0]).toMatchObject({ symbol: 'e' });
    expect(steps.find(({ symbol }) => symbol === 'P_c')?.value).toBeCloseTo(4e6, 0);
  });

  it('counts in the rating of a vessel by the American code', () => {
    const vessel = {
      code: 'ASME VIII-1',
      innerDiameterM: 0.3,
      wallThicknessM: 0.012,
      form: 'conical',
      endThicknessM: 0.012,
      coneHalfAngleDeg: 30,
      allowableStressPa: 112e6,
      jointEfficiency: 0.85,
    } as const;
    expect(valueOf(evaluate(vesselRating, vessel)).endPressurePaGauge).toBe(
      pressureOf({ code: 'ASME VIII-1', thicknessM: 0.012 }),
    );
  });
});
