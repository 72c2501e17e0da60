import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { flatCover } from './flat-cover.js';
import { requiredWall } from './required-wall.js';
import { vesselRating } from './vessel-rating.js';

const base = { thicknessM: 0.05, sealDiameterM: 0.3, loadDiameterM: 0.36, allowableStressPa: 110e6 };
const cover = (change: object) => {
  const outcome = evaluate(flatCover, { ...base, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};
const openings = {
  coverCentralOpeningM: 0.06,
  coverPortDiameterM: 0.03,
  coverPortCount: 6,
  coverPortCircleM: 0.2,
};

describe('strength.flatCover', () => {
  it('needs the thickness that carries its pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.005, max: 0.2, noNaN: true }), fc.boolean(), (thicknessM, opened) => {
        const change = { thicknessM, ...(opened ? openings : {}) };
        const { pressurePaGauge } = cover(change);
        expect(cover({ ...change, pressurePaGauge }).requiredThicknessM).toBeCloseTo(thicknessM, 9);
      }),
    );
  });

  it('is the cover of a vessel where nothing of a gasket is given', () => {
    const rating = evaluate(vesselRating, {
      code: 'EN 13445-3',
      innerDiameterM: 0.28,
      wallThicknessM: 0.02,
      form: 'hemispherical',
      endThicknessM: 0.02,
      allowableStressPa: 110e6,
      coverThicknessM: 0.05,
      coverSealDiameterM: 0.3,
      coverLoadDiameterM: 0.36,
      ...openings,
    });
    expect(rating.ok && rating.value.coverPressurePaGauge).toBeCloseTo(cover(openings).pressurePaGauge, 3);
  });

  it('is weaker with a gasket that must be held tight', () => {
    expect(cover({ gasketWidthM: 0.008, gasketFactor: 3 }).pressurePaGauge).toBeLessThan(
      cover({}).pressurePaGauge,
    );
  });

  it('asks for thickness against the load at assembly', () => {
    // Ring moment W (C − G)/2 over the circumference π G against f_A e²/6.
    const { assemblyThicknessM } = cover({ assemblyLoadN: 5e5 });
    const moment = (5e5 * 0.03) / (Math.PI * 0.3);
    expect((6 * moment) / assemblyThicknessM ** 2).toBeCloseTo(110e6, 2);
    expect(cover({ assemblyLoadN: 5e5, pressurePaGauge: 1 }).requiredThicknessM).toBe(assemblyThicknessM);
  });

  it.each([
    ['loadDiameterM', { loadDiameterM: 0.29 }],
    ['coverCentralOpeningM', { coverCentralOpeningM: 0.3 }],
    ['coverPortDiameterM', { ...openings, coverPortCount: 30 }],
  ])('refuses %s outside its range', (field, change) => {
    expect(evaluate(flatCover, { ...base, ...change })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field },
    });
  });

  it('asks for the pitch circle of its ports', () => {
    expect(evaluate(flatCover, { ...base, coverPortDiameterM: 0.02, coverPortCount: 4 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'coverPortCircleM' },
    });
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(flatCover, { ...base, ...openings });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual(['k_o', 'P', 'e_A']);
  });
});

describe('strength.requiredWall', () => {
  it('carries its pressure in corroded state, and not with a step less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e5, max: 60e6, noNaN: true }),
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        fc.constantFrom(0, 0.001, 0.003),
        (pressurePaGauge, innerDiameterM, corrosionAllowanceM) => {
          const common = {
            code: 'EN 13445-3' as const,
            innerDiameterM,
            allowableStressPa: 110e6,
            corrosionAllowanceM,
          };
          const wall = evaluate(requiredWall, { ...common, pressurePaGauge });
          if (!wall.ok) throw new Error(wall.error.message);
          const rated = (wallThicknessM: number) => {
            const rating = evaluate(vesselRating, {
              ...common,
              wallThicknessM,
              form: 'flat',
              endThicknessM: 1,
            });
            return rating.ok ? rating.value.shellPressurePaGauge : 0;
          };
          expect(rated(wall.value.wallThicknessM)).toBeGreaterThanOrEqual(pressurePaGauge * (1 - 1e-9));
          expect(rated(wall.value.wallThicknessM - 0.0005)).toBeLessThan(pressurePaGauge);
        },
      ),
    );
  });

  it('has no wall above the allowable stress', () => {
    expect(
      evaluate(requiredWall, {
        code: 'EN 13445-3',
        innerDiameterM: 0.1,
        allowableStressPa: 110e6,
        pressurePaGauge: 111e6,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'pressurePaGauge' } });
  });
});
