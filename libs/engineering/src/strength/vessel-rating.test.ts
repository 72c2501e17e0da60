import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from '../geometry/end-form.js';
import { cylinderPressure } from './cylinder-pressure.js';
import { openingFactor } from './flat-cover-rule.js';
import { pressureCodes } from './pressure-fields.js';
import { torisphericalPressure } from './torispherical-pressure.js';
import { vesselRating, type VesselRatingInputs } from './vessel-rating.js';

const base: VesselRatingInputs = {
  code: 'EN 13445-3',
  innerDiameterM: 0.3,
  wallThicknessM: 0.012,
  form: 'torispherical DIN 28013',
  endThicknessM: 0.014,
  allowableStressPa: 112e6,
};

const rating = (inputs: VesselRatingInputs) => {
  const outcome = evaluate(vesselRating, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('strength.vesselRating', () => {
  it('is the least of its parts, each as its own calculation has it', () => {
    const { pressurePaGauge, limitingPart, shellPressurePaGauge, endPressurePaGauge } = rating(base);
    const common = { code: 'EN 13445-3' as const, allowableStressPa: 112e6, jointEfficiency: 1 };
    const shell = evaluate(cylinderPressure, { ...common, innerRadiusM: 0.15, thicknessM: 0.012 });
    const end = evaluate(torisphericalPressure, {
      ...common,
      outerDiameterM: 0.328,
      crownRadiusM: 0.8 * 0.328,
      knuckleRadiusM: 0.154 * 0.328,
      thicknessM: 0.014,
    });
    expect(shell.ok && shell.value.pressurePaGauge).toBe(shellPressurePaGauge);
    expect(end.ok && end.value.pressurePaGauge).toBe(endPressurePaGauge);
    expect(pressurePaGauge).toBe(Math.min(shellPressurePaGauge, endPressurePaGauge));
    expect(limitingPart).toBe(shellPressurePaGauge < endPressurePaGauge ? 'shell' : 'end');
  });

  it('takes the corrosion allowance off the wall from inside', () => {
    const { shellPressurePaGauge } = rating({ ...base, corrosionAllowanceM: 0.002 });
    const corroded = evaluate(cylinderPressure, {
      code: 'EN 13445-3',
      innerRadiusM: 0.152,
      thicknessM: 0.01,
      allowableStressPa: 112e6,
      jointEfficiency: 1,
    });
    expect(corroded.ok && corroded.value.pressurePaGauge).toBeCloseTo(shellPressurePaGauge, 3);
  });

  it('uses the thick-wall method above e/De = 0.16 and says so', () => {
    const thick = rating({
      ...base,
      innerDiameterM: 0.06,
      wallThicknessM: 0.02,
      form: 'flat',
      endThicknessM: 0.05,
    });
    expect(thick.shellMethod).toBe('thick wall');
    expect(thick.shellPressurePaGauge / 112e6).toBeCloseTo(
      (0.05 ** 2 - 0.03 ** 2) / (0.05 ** 2 + 0.03 ** 2),
      12,
    );
    expect(rating(base).shellMethod).toBe('thin wall');
  });

  it('counts a cover as a simply supported plate: 3 (3 + ν)/32 p D²/e² in the centre', () => {
    // Timoshenko, Theory of Plates and Shells, §16: σ = 3 (3 + ν)/8 · p a²/e².
    const { coverPressurePaGauge } = rating({ ...base, coverThicknessM: 0.04 });
    const stress = ((3 * 3.3) / 8) * (coverPressurePaGauge ?? 0) * (0.15 / 0.04) ** 2;
    expect(stress).toBeCloseTo(112e6, 2);
  });

  it('weakens a cover by its openings and by a wider load circle', () => {
    const solid = rating({ ...base, coverThicknessM: 0.04 }).coverPressurePaGauge ?? 0;
    const opened = rating({
      ...base,
      coverThicknessM: 0.04,
      coverCentralOpeningM: 0.05,
      coverPortDiameterM: 0.03,
      coverPortCount: 6,
      coverPortCircleM: 0.2,
    });
    // Tightest: ports to the seal, j = 0.3 − 0.2, d = 0.03: (j − d)/j = 0.7; neighbours 1 − 0.03/0.1; centre 1 − 0.08/0.2.
    expect((opened.coverPressurePaGauge ?? 0) / solid).toBeCloseTo(0.6, 12);
    const wider =
      rating({ ...base, coverThicknessM: 0.04, coverLoadDiameterM: 0.36 }).coverPressurePaGauge ?? 0;
    expect(wider / solid).toBeCloseTo(0.309375 / (0.309375 + 0.75 * 0.2), 12);
  });

  it('counts a dished end too thick for its formula as the thickest that the formula reaches', () => {
    const at = (endThicknessM: number) =>
      rating({ ...base, form: 'torispherical DIN 28013', endThicknessM }).endPressurePaGauge;
    expect(at(0.05)).toBeGreaterThan(at(0.02));
    expect(Number.isFinite(at(0.14))).toBe(true);
  });

  it('weakens the end by an opening, less so with a branch', () => {
    const at = (change: object) => rating({ ...base, ...change }).endPressurePaGauge;
    const whole = at({});
    const hole = at({ endOpeningDiameterM: 0.06 });
    const reinforced = at({ endOpeningDiameterM: 0.06, endBranchThicknessM: 0.012 });
    expect(hole).toBeLessThan(whole);
    expect(reinforced).toBeGreaterThan(hole);
    expect(reinforced).toBeLessThanOrEqual(whole);
    const flat = { form: 'flat' as const, endThicknessM: 0.05 };
    expect(at({ ...flat, endOpeningDiameterM: 0.06 }) / at(flat)).toBeCloseTo(0.8, 12);
  });

  it('counts a cone by itself and by its junction', () => {
    const cone = { form: 'conical' as const, coneHalfAngleDeg: 30, endThicknessM: 0.012 };
    const { endPressurePaGauge } = rating({ ...base, ...cone });
    // EN 13445-3 7.6.4 and 7.6.6 by hand: D_c = 0.312 m, √(0.312/0.012) = 5.09902.
    const beta = (5.09902 * Math.tan(Math.PI / 6)) / (3 * (1 + 1 / Math.sqrt(Math.cos(Math.PI / 6)))) - 0.15;
    const junction = (2 * 112e6 * 0.012) / (0.312 * beta);
    const wall = (2 * 112e6 * 0.012 * Math.cos(Math.PI / 6)) / (0.3 + 0.012 * Math.cos(Math.PI / 6));
    expect(endPressurePaGauge / Math.min(junction, wall)).toBeCloseTo(1, 5);
    expect(evaluate(vesselRating, { ...base, ...cone, code: 'AD 2000' })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'code' },
    });
  });

  it.each([
    ['endOpeningDiameterM', { endOpeningDiameterM: 0.181 }],
    ['endBranchThicknessM', { endOpeningDiameterM: 0.06, endBranchThicknessM: 0.03 }],
    ['wallThicknessM', { corrosionAllowanceM: 0.012 }],
    [
      'coverPortCircleM',
      { coverThicknessM: 0.04, coverPortDiameterM: 0.02, coverPortCount: 2, coverPortCircleM: 0.3 },
    ],
    [
      'coverPortDiameterM',
      { coverThicknessM: 0.04, coverPortDiameterM: 0.09, coverPortCount: 6, coverPortCircleM: 0.15 },
    ],
    ['coverLoadDiameterM', { coverThicknessM: 0.04, coverLoadDiameterM: 0.2 }],
    ['coneHalfAngleDeg', { form: 'conical' as const, coneHalfAngleDeg: 61 }],
    ['endThicknessM', { endThicknessM: 0.0002 }],
  ])('names %s where it does not fit', (field, change) => {
    const outcome = evaluate(vesselRating, { ...base, ...change });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field } });
  });

  it('shows the pressure of every part', () => {
    const evidence = evaluateWithEvidence(vesselRating, { ...base, coverThicknessM: 0.04 });
    const symbols = evidence.ok ? evidence.value.steps.map(({ symbol }) => symbol) : [];
    expect(symbols).toEqual(expect.arrayContaining(['P_shell', 'P_end', 'P_cover', 'PS']));
  });

  const wall = fc.double({ min: 0.004, max: 0.02, noNaN: true });
  it('never falls with a thicker wall or a stronger material', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...endForms),
        fc.tuple(wall, wall, wall, wall),
        fc.tuple(fc.double({ min: 1, max: 2, noNaN: true }), fc.double({ min: 1, max: 1.3, noNaN: true })),
        (form, [shell, end, more, cover], [stronger, thicker]) => {
          const given = { ...base, form, coneHalfAngleDeg: 30, wallThicknessM: shell, endThicknessM: end };
          const least = rating({ ...given, coverThicknessM: cover + more }).pressurePaGauge;
          expect(
            rating({ ...given, coverThicknessM: cover + more, allowableStressPa: 112e6 * stronger })
              .pressurePaGauge,
          ).toBeGreaterThanOrEqual(least * (1 - 1e-12));
          const shellMore = rating({ ...given, wallThicknessM: shell * thicker }).shellPressurePaGauge;
          expect(shellMore).toBeGreaterThanOrEqual(rating(given).shellPressurePaGauge * (1 - 1e-12));
        },
      ),
    );
  });

  it('answers finite numbers or a coded error over every size, code and form', () => {
    const extreme = fc.double({ min: 1e-9, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          code: fc.constantFrom(...pressureCodes),
          form: fc.constantFrom(...endForms),
          innerDiameterM: extreme,
          wallThicknessM: extreme,
          endThicknessM: extreme,
          coverThicknessM: extreme,
          allowableStressPa: fc.double({ min: 1, max: 1e10, noNaN: true }),
        }),
        (inputs) => {
          const outcome = evaluate(vesselRating, inputs);
          if (!outcome.ok) expect(['CALC_OUT_OF_RANGE', 'CALC_INVALID_INPUT']).toContain(outcome.error.code);
          else expect(outcome.value.pressurePaGauge).toBeGreaterThan(0);
        },
      ),
    );
  });
});

describe('openings of a cover', () => {
  it('leave all of it where there are none', () => {
    expect(openingFactor({ central: 0, port: 0, portCount: 0, portCircle: 0 }, 0.3)).toBe(1);
  });

  it('weaken by the closest pair', () => {
    // Two opposite ports have their pitch circle between their centres.
    expect(openingFactor({ central: 0, port: 0.05, portCount: 2, portCircle: 0.1 }, 0.3)).toBeCloseTo(
      0.5,
      12,
    );
  });
});
