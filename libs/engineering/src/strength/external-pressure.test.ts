import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from '../geometry/end-form.js';
import { collapseRatio } from './collapse-curve.js';
import { externalPressureCylinder } from './external-pressure-cylinder.js';
import { cylinderUnderExternalPressure } from './external-pressure-cylinder-en.js';
import { externalPressureEllipsoidalEnd } from './external-pressure-ellipsoidal-end.js';
import { vesselExternalRating } from './vessel-external-rating.js';

const steel = { elasticModulus: 200e9, elasticLimit: 160e6, safetyFactor: 1.5 };
const unit = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('elastic instability of a cylinder', () => {
  it('tends to E/(4 (1 − ν²)) (e/R)³ for a long one', () => {
    // Timoshenko, Theory of Elastic Stability, §11.5: critical pressure of a long tube.
    const { elasticInstability, lobes } = cylinderUnderExternalPressure({
      ...steel,
      outerDiameter: 1.01,
      thickness: 0.01,
      unsupportedLength: 1e4,
    });
    expect(lobes).toBe(2);
    expect(elasticInstability / ((200e9 / (4 * (1 - 0.09))) * (0.01 / 0.5) ** 3)).toBeCloseTo(1, 3);
  });

  it('agrees with the formula of Windenburg and Trilling for a short one within 10 %', () => {
    // Windenburg and Trilling 1934: 2.42 E (t/D)^2.5 / ((1 − ν²)^0.75 (L/D − 0.45 √(t/D))).
    for (const [e, L] of [
      [0.004, 1],
      [0.008, 0.6],
      [0.01, 2],
    ] as const) {
      const { elasticInstability } = cylinderUnderExternalPressure({
        ...steel,
        outerDiameter: 1 + e,
        thickness: e,
        unsupportedLength: L,
      });
      const formula = (2.42 * 200e9 * e ** 2.5) / (0.91 ** 0.75 * (L - 0.45 * Math.sqrt(e)));
      expect(Math.abs(elasticInstability / formula - 1)).toBeLessThan(0.1);
    }
  });

  it('finds the number of lobes that a search over all of them finds', () => {
    const strain = (n: number, Z: number, t: number) =>
      (1 / ((n * n) / Z ** 2 + 1) ** 2 + (t ** 2 / (12 * 0.91)) * (n * n - 1 + Z * Z) ** 2) /
      (n * n - 1 + Z ** 2 / 2);
    fc.assert(
      fc.property(unit(0.001, 0.1), unit(0.05, 50), (e, L) => {
        const found = cylinderUnderExternalPressure({
          ...steel,
          outerDiameter: 1,
          thickness: e,
          unsupportedLength: L,
        });
        const R = (1 - e) / 2;
        let least = Infinity;
        for (let n = 2; n <= 200; n += 1) least = Math.min(least, strain(n, (Math.PI * R) / L, e / R));
        expect(found.elasticInstability / ((200e9 * e * least) / R)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the collapse curves', () => {
  it.each(['cylinder', 'dishedEnd'] as const)(
    'of a %s rise, and stay below half of the elastic pressure',
    (kind) => {
      fc.assert(
        fc.property(unit(1e-9, 20), unit(1e-9, 20), (first, second) => {
          const [low, high] = [Math.min(first, second), Math.max(first, second)];
          expect(collapseRatio(kind, low)).toBeLessThanOrEqual(collapseRatio(kind, high));
          expect(collapseRatio(kind, high)).toBeLessThanOrEqual(Math.min(1, 0.51 * high));
        }),
      );
    },
  );

  it('hold their printed points', () => {
    expect(collapseRatio('cylinder', 1)).toBe(0.4995);
    expect(collapseRatio('dishedEnd', 6.5)).toBe(0.57);
    expect(collapseRatio('dishedEnd', 100)).toBe(0.57);
  });
});

describe('strength.externalPressureCylinder', () => {
  const asme = { code: 'ASME VIII-1' as const, outerDiameterM: 0.5, thicknessM: 0.01, factorBPa: 50e6 };

  it('needs the stress S below D_o/t = 10', () => {
    expect(evaluate(externalPressureCylinder, { ...asme, thicknessM: 0.05 }).ok).toBe(true);
    expect(evaluate(externalPressureCylinder, { ...asme, thicknessM: 0.0501 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'externalStressPa' },
    });
    // UG-28(c)(2) joins (c)(1) at D_o/t = 10: 0.2167 − 0.0833 = 4/30.
    const joined = evaluate(externalPressureCylinder, {
      ...asme,
      thicknessM: 0.0501,
      externalStressPa: 300e6,
    });
    expect(joined.ok && joined.value.pressurePa / ((4 * 50e6) / 30)).toBeCloseTo(1, 2);
  });

  it.each([
    ['factorBPa', { code: 'ASME VIII-1' as const }],
    ['unsupportedLengthM', { code: 'EN 13445-3' as const }],
    ['elasticModulusPa', { code: 'EN 13445-3' as const, unsupportedLengthM: 1 }],
    ['elasticLimitPa', { code: 'EN 13445-3' as const, unsupportedLengthM: 1, elasticModulusPa: 2e11 }],
  ])('asks for %s', (field, given) => {
    expect(
      evaluate(externalPressureCylinder, { outerDiameterM: 0.5, thicknessM: 0.01, ...given }),
    ).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field },
    });
  });

  it('never lets a thick cylinder yield at its bore', () => {
    // Lamé, pressure from outside: hoop stress at the bore 2 p D_e²/(D_e² − D_i²).
    const outcome = evaluate(externalPressureCylinder, {
      code: 'EN 13445-3',
      outerDiameterM: 0.1,
      thicknessM: 0.025,
      unsupportedLengthM: 0.2,
      elasticModulusPa: 200e9,
      elasticLimitPa: 160e6,
      safetyFactor: 1,
    });
    expect(outcome.ok && (2 * outcome.value.pressurePa) / (1 - 0.25)).toBeLessThanOrEqual(160e6);
  });
});

describe('strength.externalPressureEllipsoidalEnd', () => {
  const base = {
    code: 'EN 13445-3' as const,
    outerDiameterM: 0.4,
    outsideHeightM: 0.1,
    thicknessM: 0.006,
    elasticModulusPa: 200e9,
    elasticLimitPa: 160e6,
    safetyFactor: 1.5,
  };

  it('is a hemisphere at h = D/2', () => {
    const outcome = evaluate(externalPressureEllipsoidalEnd, { ...base, outsideHeightM: 0.2 });
    expect(outcome.ok && outcome.value.equivalentRadiusM).toBeCloseTo(0.2, 12);
  });

  it.each([
    ['outsideHeightM', { outsideHeightM: 0.059 }],
    ['outsideHeightM', { outsideHeightM: 0.201 }],
    ['thicknessM', { thicknessM: 0.07 }],
  ])('refuses %s outside its range', (field, change) => {
    expect(evaluate(externalPressureEllipsoidalEnd, { ...base, ...change })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field },
    });
  });
});

describe('strength.vesselExternalRating', () => {
  const base = {
    innerDiameterM: 0.4,
    cylinderLengthM: 0.5,
    wallThicknessM: 0.006,
    form: 'torispherical DIN 28013' as const,
    endThicknessM: 0.008,
    elasticModulusPa: 190e9,
    elasticLimitPa: 120e6,
  };
  const rating = (change: object) => {
    const outcome = evaluate(vesselExternalRating, { ...base, ...change });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('adds jacket pressure and vacuum', () => {
    expect(rating({}).demandPressurePa).toBe(101_325);
    expect(rating({ jacketPressurePaGauge: 3e5 }).demandPressurePa).toBe(401_325);
    expect(rating({ innerPressurePaAbs: 101_325 }).demandPressurePa).toBe(0);
    const { utilisation, demandPressurePa, allowablePressurePa } = rating({ jacketPressurePaGauge: 3e5 });
    expect(utilisation).toBeCloseTo(demandPressurePa / allowablePressurePa, 12);
  });

  it('is that of the shell over its length and four tenths of the dish, or of the end', () => {
    const { shellPressurePa, endPressurePa, allowablePressurePa, limitingPart } = rating({
      form: 'hemispherical',
    });
    const shell = evaluate(externalPressureCylinder, {
      code: 'EN 13445-3',
      outerDiameterM: 0.412,
      thicknessM: 0.006,
      unsupportedLengthM: 0.5 + 0.4 * 0.2,
      elasticModulusPa: 190e9,
      elasticLimitPa: 120e6,
    });
    expect(shell.ok && shell.value.pressurePa).toBeCloseTo(shellPressurePa ?? 0, 3);
    expect(allowablePressurePa).toBe(Math.min(shellPressurePa ?? Infinity, endPressurePa));
    expect(limitingPart).toBe((shellPressurePa ?? Infinity) <= endPressurePa ? 'shell' : 'end');
  });

  it('shows jacket and vacuum together in its steps', () => {
    const evidence = evaluateWithEvidence(vesselExternalRating, { ...base, jacketPressurePaGauge: 3e5 });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      ...['R', 'P_y', 'Z', 'ε', 'P_m', 'k', 'P_r', 'P_shell'],
      ...['P_y', 'P_m', 'k', 'P_r', 'P_end'],
      'p_d',
    ]);
  });

  it('falls with length and corrosion, and is finite over every size and form', () => {
    fc.assert(
      fc.property(fc.constantFrom(...endForms), unit(0.05, 3), unit(1, 5), (form, length, longer) => {
        const given = { form, coneHalfAngleDeg: 30, cylinderLengthM: length };
        const short = rating(given).allowablePressurePa;
        expect(
          rating({ ...given, cylinderLengthM: length * longer }).allowablePressurePa,
        ).toBeLessThanOrEqual(short);
        expect(rating({ ...given, corrosionAllowanceM: 0.001 }).allowablePressurePa).toBeLessThanOrEqual(
          short,
        );
      }),
    );
    const extreme = unit(1e-6, 1e4);
    fc.assert(
      fc.property(
        fc.constantFrom(...endForms),
        fc.tuple(extreme, extreme, extreme, extreme),
        (form, sizes) => {
          const [innerDiameterM, cylinderLengthM, wallThicknessM, endThicknessM] = sizes;
          const outcome = evaluate(vesselExternalRating, {
            ...base,
            form,
            coneHalfAngleDeg: 45,
            innerDiameterM,
            cylinderLengthM,
            wallThicknessM,
            endThicknessM,
          });
          if (outcome.ok) expect(outcome.value.allowablePressurePa).toBeGreaterThan(0);
          else expect(outcome.error.code).toBe('CALC_OUT_OF_RANGE');
        },
      ),
    );
  });
});
