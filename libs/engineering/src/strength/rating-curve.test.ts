import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { endForms } from '../geometry/end-form.js';
import { designStressAt } from '../materials/design-stress-at.js';
import { assemblyPressure } from './assembly-pressure.js';
import { ratingCurve } from './rating-curve.js';
import { vesselRating } from './vessel-rating.js';

const base = {
  code: 'EN 13445-3' as const,
  innerDiameterM: 0.3,
  wallThicknessM: 0.012,
  form: 'torispherical DIN 28013' as const,
  endThicknessM: 0.014,
  material: '1.4404',
};

type Inputs = Parameters<typeof evaluate<typeof ratingCurve.inputs, typeof ratingCurve.outputs>>[1];

const curve = (change: Partial<Inputs>) => {
  const outcome = evaluate(ratingCurve, { ...base, temperaturesK: [293.15, 473.15, 523.15], ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('strength.ratingCurve', () => {
  it('follows UG-27 with the stresses of ASME II-D for 316L: 138, 128 and 115 MPa', () => {
    // ASME II-D table 1A, dual certified plate, at 38, 204 and 316 °C; P = S t / (R + 0.6 t); test 1.3 P S_a/S.
    const { points, testPressurePaGauge } = curve({
      code: 'ASME VIII-1',
      material: 'SA-240 316L (dual certified)',
      endThicknessM: 0.05,
      form: 'flat',
      endAttachmentFactor: 0.1,
      temperaturesK: [311.15, 477.15, 589.15],
      testTemperatureK: 311.15,
    });
    const byHand = [138e6, 128e6, 115e6].map((stress) => (stress * 0.012) / (0.15 + 0.6 * 0.012));
    points.forEach(({ pressurePaGauge, limitingPart }, i) => {
      expect(limitingPart).toBe('shell');
      expect(pressurePaGauge / byHand[i]!).toBeCloseTo(1, 6);
    });
    expect(testPressurePaGauge / (1.3 * byHand[0]!)).toBeCloseTo(1, 6);
  });

  it.each(
    endForms.flatMap((form) =>
      (['EN 13445-3', 'ASME VIII-1', 'AD 2000'] as const).map((code) => [form, code] as const),
    ),
  )('is the rating of a vessel with a %s end by %s at each temperature', (form, code) => {
    const { material: steel, ...size } = { ...base, endOpeningDiameterM: 0.04, coverThicknessM: 0.03 };
    const material = code === 'ASME VIII-1' ? 'SA-240 316L (dual certified)' : steel;
    const vessel = { ...size, form, code, coneHalfAngleDeg: 30 };
    const outcome = evaluate(ratingCurve, { ...vessel, material, temperaturesK: [311.15, 473.15, 523.15] });
    const rated = (stress: number) => evaluate(vesselRating, { ...vessel, allowableStressPa: stress });
    if (!outcome.ok) {
      expect(rated(1e8)).toEqual(outcome);
      return;
    }
    for (const { designStressPa, pressurePaGauge, limitingPart } of outcome.value.points) {
      const whole = rated(designStressPa);
      expect(whole).toMatchObject({ ok: true, value: { limitingPart } });
      expect(whole.ok && whole.value.pressurePaGauge / pressurePaGauge).toBeCloseTo(1, 12);
    }
  });

  it('takes the stress of the material at each temperature', () => {
    for (const { temperatureK, designStressPa } of curve({}).points) {
      const stress = designStressAt('1.4404', temperatureK);
      expect(stress.ok && stress.value.stressPa).toBe(designStressPa);
    }
  });

  it('tests at the higher of 1.43 PS and 1.25 PS f_a/f_t over all its points', () => {
    const { points, testPressurePaGauge } = curve({});
    const cold = points[0]!.designStressPa;
    const wanted = points.map(({ pressurePaGauge: ps, designStressPa: f }) =>
      Math.max(1.43 * ps, (1.25 * ps * cold) / f),
    );
    expect(testPressurePaGauge).toBeCloseTo(Math.max(...wanted), 3);
    // A curve of the hot point alone is governed by the ratio of stresses.
    const hot = curve({ temperaturesK: [523.15] });
    expect(hot.testPressurePaGauge / hot.points[0]!.pressurePaGauge).toBeCloseTo(
      (1.25 * cold) / points[2]!.designStressPa,
      9,
    );
  });

  it('ends at the limit of closure, seal or ports', () => {
    const { points } = curve({ pressureLimitPaGauge: 10e5 });
    expect(points.every(({ pressurePaGauge }) => pressurePaGauge === 10e5)).toBe(true);
    expect(points.every(({ limitingPart }) => limitingPart === 'other limit')).toBe(true);
    const partly = curve({ pressureLimitPaGauge: 100e5 }).points;
    expect(partly.map(({ limitingPart }) => limitingPart)).toEqual(['other limit', 'shell', 'shell']);
  });

  it('rates a cover by its own material, and tests by the lowest ratio of both', () => {
    const covered = curve({ coverThicknessM: 0.022, coverMaterial: 'P265GH', temperaturesK: [523.15] });
    expect(covered.points[0]).toMatchObject({ limitingPart: 'cover' });
    const ratio = (material: string) => {
      const [cold, hot] = [designStressAt(material, 293.15), designStressAt(material, 523.15)];
      if (!cold.ok || !hot.ok) throw new Error('no stress');
      return cold.value.stressPa / hot.value.stressPa;
    };
    const lowest = Math.min(ratio('P265GH'), ratio('1.4404'));
    expect(covered.testPressurePaGauge / covered.points[0]!.pressurePaGauge).toBeCloseTo(
      Math.max(1.43, 1.25 * lowest),
      9,
    );
  });

  it('takes the stresses of EN 13445-3 for AD 2000', () => {
    const stresses = (code: Inputs['code']) => curve({ code }).points.map((p) => p.designStressPa);
    expect(stresses('AD 2000')).toEqual(stresses('EN 13445-3'));
  });

  it('says what its stresses are worth', () => {
    expect(curve({}).basis).toBe('from memory, unverified');
    expect(
      curve({
        code: 'ASME VIII-1',
        material: 'SA-240 316L (dual certified)',
        temperaturesK: [400],
        testTemperatureK: 311.15,
      }).basis,
    ).toBe('published');
  });

  it.each([
    ['temperaturesK', 'CALC_OUT_OF_RANGE', { temperaturesK: [1100] }],
    ['testTemperatureK', 'CALC_OUT_OF_RANGE', { testTemperatureK: 1100 }],
    ['material', 'CALC_UNKNOWN_MATERIAL', { material: 'unobtainium' }],
    ['coverMaterial', 'CALC_MISSING_PROPERTY', { coverThicknessM: 0.05, coverMaterial: 'tantalum' }],
    ['wallThicknessM', 'CALC_OUT_OF_RANGE', { corrosionAllowanceM: 0.012 }],
  ] satisfies [string, string, Partial<Inputs>][])(
    'names %s where it does not fit',
    (field, code, change) => {
      expect(evaluate(ratingCurve, { ...base, temperaturesK: [300], ...change })).toMatchObject({
        ok: false,
        error: { code, field },
      });
    },
  );

  it('falls with temperature', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('1.4404', '1.4571', '1.4435', 'P265GH', 'titanium grade 2', 'alloy C-276'),
        fc.double({ min: 293.15, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (material, temperatureK, more) => {
          const outcome = evaluate(ratingCurve, {
            ...base,
            material,
            temperaturesK: [temperatureK, temperatureK + more],
          });
          if (!outcome.ok) return;
          const [cold, hot] = outcome.value.points;
          expect(hot!.pressurePaGauge).toBeLessThanOrEqual(cold!.pressurePaGauge * (1 + 1e-12));
        },
      ),
    );
  });

  it('shows each point and the test', () => {
    const evidence = evaluateWithEvidence(ratingCurve, { ...base, temperaturesK: [300, 400] });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'PS(T)',
      'PS(T)',
      'P_t',
    ]);
  });
});

describe('strength.assemblyPressure', () => {
  const parts = [
    { name: 'vessel', maxPressurePaGauge: 100e5, minTemperatureK: 263, maxTemperatureK: 573 },
    { name: 'closure', maxPressurePaGauge: 80e5, maxTemperatureK: 523 },
    { name: 'seal', maxPressurePaGauge: 120e5, minTemperatureK: 258, maxTemperatureK: 473 },
    { name: 'valve', maxPressurePaGauge: 88e5, minTemperatureK: 253 },
  ];

  it('is the least of its parts, and says how far the next one lies', () => {
    expect(evaluate(assemblyPressure, { parts })).toMatchObject({
      ok: true,
      value: {
        maxPressurePaGauge: 80e5,
        limitingPart: 'closure',
        maxTemperatureK: 473,
        hottestLimitedBy: 'seal',
        minTemperatureK: 263,
        coldestLimitedBy: 'vessel',
      },
    });
    const outcome = evaluate(assemblyPressure, { parts });
    expect(outcome.ok && outcome.value.reserveOfNext).toBeCloseTo(8 / 88, 12);
  });

  it('takes temperatures that just meet, and names the first of equals', () => {
    const meeting = [
      { name: 'pump', maxPressurePaGauge: 10e5, minTemperatureK: 300, maxTemperatureK: 400 },
      { name: 'hose', maxPressurePaGauge: 10e5, minTemperatureK: 400, maxTemperatureK: 400 },
    ];
    expect(evaluate(assemblyPressure, { parts: meeting })).toEqual({
      ok: true,
      value: {
        maxPressurePaGauge: 10e5,
        limitingPart: 'pump',
        reserveOfNext: 0,
        maxTemperatureK: 400,
        hottestLimitedBy: 'pump',
        minTemperatureK: 400,
        coldestLimitedBy: 'hose',
      },
    });
  });

  it('takes one part as it is', () => {
    expect(evaluate(assemblyPressure, { parts: [{ name: 'vessel', maxPressurePaGauge: 5 }] })).toEqual({
      ok: true,
      value: { maxPressurePaGauge: 5, limitingPart: 'vessel' },
    });
  });

  it('compares with no part that carries nothing', () => {
    const open = { name: 'open funnel', maxPressurePaGauge: 0 };
    expect(evaluate(assemblyPressure, { parts: [...parts, open] })).toMatchObject({
      ok: true,
      value: { maxPressurePaGauge: 0, limitingPart: 'open funnel', reserveOfNext: 1 },
    });
    const outcome = evaluate(assemblyPressure, { parts: [open, open] });
    expect(outcome.ok && outcome.value.reserveOfNext).toBeUndefined();
  });

  it('refuses parts whose temperatures do not meet, and names both', () => {
    const outcome = evaluate(assemblyPressure, {
      parts: [...parts, { name: 'heater', maxPressurePaGauge: 90e5, minTemperatureK: 480 }],
    });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'parts' } });
    expect(outcome.ok ? '' : outcome.error.message).toMatch(
      /heater needs at least 480 K, seal carries at most 473 K/u,
    );
  });

  it('does not depend on the order, and never rises with a further part', () => {
    const any = fc.array(
      fc.record({
        name: fc.string({ minLength: 1 }),
        maxPressurePaGauge: fc.double({ min: 0, max: 1e9, noNaN: true }),
      }),
      { minLength: 1, maxLength: 20 },
    );
    const ps = (some: { name: string; maxPressurePaGauge: number }[]) => {
      const outcome = evaluate(assemblyPressure, { parts: some });
      return outcome.ok ? outcome.value.maxPressurePaGauge : Number.NaN;
    };
    fc.assert(
      fc.property(any, any, (some, more) => {
        expect(ps([...some].reverse())).toBe(ps(some));
        expect(ps([...some, ...more])).toBe(Math.min(ps(some), ps(more)));
      }),
    );
  });

  it('shows which part limits', () => {
    const evidence = evaluateWithEvidence(assemblyPressure, { parts });
    expect(evidence.ok && evidence.value.steps[0]?.note).toBe('limited by closure');
    expect(evidence.ok && evidence.value.steps[0]?.substituted).toBe(
      'vessel 10000000, closure 8000000, seal 12000000, valve 8800000',
    );
  });
});
