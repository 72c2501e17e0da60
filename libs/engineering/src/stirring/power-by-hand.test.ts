import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { redone, stepFaults } from '../redone-by-hand.js';
import { fullyBaffledPowerNumber } from './fully-baffled-power-number.js';
import { highestSpeed } from './highest-speed.js';
import { impellerTorque } from './impeller-torque.js';
import { powerNumber } from './power-number.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

type PowerInputs = Parameters<typeof evaluate<typeof powerNumber.inputs, typeof powerNumber.outputs>>[1];

const numberOf = (inputs: PowerInputs) => valueOf(evaluate(powerNumber, inputs));

/** d, D, H, b [m], n, θ [°] of impellers that are not alike in anything. */
const pitched: Omit<PowerInputs, 'reynolds'> = {
  impeller: 'pitched blade turbine',
  impellerDiameterM: 0.2,
  vesselDiameterM: 0.5,
  liquidHeightM: 0.8,
  bladeCount: 4,
  bladeWidthOverDiameter: 0.15,
  bladeAngleDeg: 60,
};
const slim: Omit<PowerInputs, 'reynolds'> = {
  impeller: 'paddle',
  impellerDiameterM: 0.05,
  vesselDiameterM: 0.5,
  liquidHeightM: 0.4,
  bladeCount: 2,
  bladeWidthOverDiameter: 0.08,
  bladeAngleDeg: 90,
};
const broad: Omit<PowerInputs, 'reynolds'> = {
  impeller: 'pitched blade turbine',
  impellerDiameterM: 0.4,
  vesselDiameterM: 0.5,
  liquidHeightM: 0.5,
  bladeCount: 8,
  bladeWidthOverDiameter: 0.5,
  bladeAngleDeg: 45,
};

describe('Kamei and Hiraoka, computed apart in lengths and not in ratios', () => {
  // With d, b, D, H in metres and θ in radians, without baffles:
  //   η = 0.711 (0.157 + [n ln(D/d)]^0.611) / (n^0.52 [1 − (d/D)²]),  β = 2 ln(D/d) / (D/d − d/D)
  //   γ = [η ln(D/d) / (β D/d)^5]^(1/3),  X = γ n^0.7 b sin^1.6 θ / H
  //   C_t = [(1.96 X^1.19)^−7.8 + 0.25^−7.8]^(−1/7.8),  m = [(0.71 X^0.373)^−7.8 + 0.333^−7.8]^(−1/7.8)
  //   C_tr = 23.8 (d/D)^−3.24 (b sin θ/D)^−1.18 X^−0.74,  f∞ = 0.0151 (d/D) C_t^0.308
  //   C_L = 0.215 η n (d/H) [1 − (d/D)²] + 1.83 (b sin θ/H) (n / (2 sin θ))^(1/3)
  //   Re_G = π η ln(D/d) / (4 d / (β D)) Re,  f = C_L/Re_G + C_t [1/(C_tr/Re_G + Re_G) + (f∞/C_t)^(1/m)]^m
  //   Np_0 = 1.2 π⁴ β² / (8 d³/(D² H)) f
  it.each([
    ['pitched, laminar', pitched, 1, 47.0056124806682],
    ['pitched, transition', pitched, 300, 1.841956665813998],
    ['pitched, turbulent', pitched, 1e5, 0.7461737779722674],
    ['slim', slim, 50, 1.4182936190928754],
    ['slim, turbulent', slim, 1e6, 0.9127790783249932],
    ['broad', broad, 1e3, 1.331711496373405],
    ['broad, rough', broad, 1e7, 0.2223189848687491],
  ] as const)('gives the unbaffled power number: %s', (_name, impeller, reynolds, expected) => {
    const without = numberOf({ ...impeller, baffleCount: 0, reynolds }).powerNumber;
    expect(without / expected).toBeCloseTo(1, 9);
    // Baffles without width are none.
    expect(numberOf({ ...impeller, baffleWidthOverVessel: 0, reynolds }).powerNumber).toBe(without);
  });

  // Np_max = 10 w^1.3 (w ≤ 0.54), 8.3 w (≤ 1.6), 10 w^0.6 with w = n^0.7 b/d, × (2θ/π)^0.9 sin^1.6 θ
  // x = 4.5 (B_w/D) n_B^0.8 / ((2θ/π)^0.72 Np_max^0.2) + Np_0/Np_max,  Np_b = (1 + x^−3)^(−1/3) Np_max
  it.each([
    ['w = 0.396', { ...pitched, baffleCount: 3, baffleWidthOverVessel: 0.08 }, 1e5, 1.5127521735308749],
    [
      'w = 0.325, two blades',
      { ...slim, impellerDiameterM: 0.1, bladeWidthOverDiameter: 0.2, baffleCount: 2 },
      1e6,
      1.8666883313769829,
    ],
    [
      'w = 2.14',
      {
        ...broad,
        impellerDiameterM: 0.25,
        bladeAngleDeg: 60,
        baffleCount: 1,
        baffleWidthOverVessel: 0.05,
      },
      1e4,
      2.848224524497071,
    ],
    [
      'w = 0.701',
      {
        ...pitched,
        impeller: 'disc turbine',
        impellerDiameterM: 0.15,
        liquidHeightM: 0.5,
        bladeCount: 6,
        bladeWidthOverDiameter: 0.2,
        bladeAngleDeg: 90,
        baffleCount: 4,
      },
      1e5,
      4.882921673422264,
    ],
  ] as const)('gives the baffled power number: %s', (_name, impeller, reynolds, expected) => {
    expect(numberOf({ ...impeller, reynolds }).powerNumber / expected).toBeCloseTo(1, 9);
  });

  it('blends baffles in with half of their effect at Re 500, and not below the unbaffled number', () => {
    // At Re 200 Np_b = 1.604 lies under Np_0 = 1.884: the latter stands.
    const few = { ...pitched, baffleCount: 3, baffleWidthOverVessel: 0.08 };
    expect(numberOf({ ...few, reynolds: 200 }).powerNumber / 1.8842374231505241).toBeCloseTo(1, 9);
  });

  it.each([
    ['pitched', pitched],
    ['slim', slim],
    ['broad', broad],
    ['disc turbine', { ...slim, impeller: 'disc turbine', bladeCount: 6, bladeWidthOverDiameter: 0.2 }],
  ] as const)('can be redone from its steps: %s', (_name, impeller) => {
    const { steps, outputs } = valueOf(evaluateWithEvidence(powerNumber, { ...impeller, reynolds: 2000 }));
    expect(stepFaults(steps)).toEqual([]);
    for (const { substituted } of steps) expect(redone(substituted)).toBeTypeOf('number');
    expect(steps.find(({ symbol }) => symbol === 'Np')?.value).toBe(outputs['powerNumber']);
  });
});

describe('fully baffled power number', () => {
  const of = (bladeAngleDeg: number, bladeCount: number, bladeWidthOverDiameter: number) =>
    valueOf(
      evaluateWithEvidence(fullyBaffledPowerNumber, { bladeAngleDeg, bladeCount, bladeWidthOverDiameter }),
    );

  it('is 8.3 (2θ/π)^0.9 n^0.7 (b/d) sin^1.6 θ at 45°', () => {
    // 8.3 × 0.5^0.9 × 4^0.7 × 0.2 × 0.5^0.8 = 8.3 × 2^(−0.9 + 1.4 − 0.8) × 0.2 = 1.66 × 2^−0.3
    expect(of(45, 4, 0.2).outputs['powerNumber']).toBeCloseTo(1.66 * 2 ** -0.3, 12);
  });

  it.each([
    // n^0.7 b/d for n = 1 is the width itself.
    [0.53, true],
    [0.54, false],
    [1, false],
  ])('says at n^0.7 b/d = %d whether it is extrapolated', (width, extrapolated) => {
    expect(of(90, 1, width).steps[0]?.note !== undefined).toBe(extrapolated);
  });

  it.each([
    // 8^0.7 = 4.287
    [0.37, false],
    [0.38, true],
  ])('says for eight blades of %d d whether it is extrapolated', (width, extrapolated) => {
    expect(of(90, 8, width).steps[0]?.note !== undefined).toBe(extrapolated);
  });
});

describe('impellers by two constants', () => {
  it('an anchor has K_L = 82 (c/T)^(−1/4), c = (T − D)/2', () => {
    // c/T = 0.05: 82 × 0.05^(−1/4) = 82 × 2.11474 = 173.41
    const anchor = numberOf({
      impeller: 'anchor',
      impellerDiameterM: 0.45,
      vesselDiameterM: 0.5,
      reynolds: 1,
    });
    expect(anchor.laminarConstant).toBeCloseTo(173.41, 2);
    expect(anchor.powerNumber).toBeCloseTo(173.41 + 0.35, 2);
    expect(anchor.lowPowerNumber / anchor.powerNumber).toBeCloseTo(0.75, 12);
    expect(anchor.highPowerNumber / anchor.powerNumber).toBeCloseTo(1.5, 12);
  });

  it('widens the band downwards without baffles, for axial impellers alone', () => {
    const low = (impeller: 'propeller' | 'disc turbine', baffleCount: number): number => {
      const found = numberOf({
        impeller,
        impellerDiameterM: 0.1,
        vesselDiameterM: 0.3,
        baffleCount,
        reynolds: 1e5,
      });
      return found.lowPowerNumber / found.powerNumber;
    };
    expect(low('propeller', 0)).toBeCloseTo(0.4, 12);
    expect(low('propeller', 4)).toBeGreaterThan(0.5);
    expect(low('disc turbine', 0)).toBeCloseTo(0.8, 12);
  });

  it.each([
    ['paddle', 0.1, true],
    ['paddle', 0.9, true],
    ['paddle', 0.901, false],
    ['propeller', 0.099, false],
    ['anchor', 0.7, true],
    ['anchor', 0.995, true],
    ['anchor', 0.996, false],
  ] as const)('%s of D/T %d: %s', (impeller, ratio, allowed) => {
    const outcome = evaluate(powerNumber, {
      impeller,
      impellerDiameterM: ratio,
      vesselDiameterM: 1,
      reynolds: 100,
    });
    expect(outcome.ok).toBe(allowed);
  });

  it.each([
    [9.9, 'laminar'],
    [10, 'laminar'],
    [10.1, 'transition'],
    [9999, 'transition'],
    [10_000, 'turbulent'],
  ] as const)('calls Re %d %s', (reynolds, regime) => {
    expect(
      numberOf({ impeller: 'propeller', impellerDiameterM: 0.1, vesselDiameterM: 0.3, reynolds }).regime,
    ).toBe(regime);
  });
});

describe('torque in a power-law liquid', () => {
  // k_s of a turbine 11.5, from 10 to 13; its band of power numbers reaches 1.25 of the centre.
  const turbine = {
    impeller: 'disc turbine',
    impellerDiameterM: 0.1,
    vesselDiameterM: 0.3,
    densityKgPerM3: 1000,
    speedPerS: 4,
  } as const;
  const torque = (liquid: {
    readonly consistencyPaSn?: number;
    readonly flowIndex?: number;
    readonly viscosityPaS?: number;
  }) => evaluate(impellerTorque, { ...turbine, ...liquid });

  it('takes the apparent viscosity at k_s N: 2000 (11.5 × 4)^(−1/2)', () => {
    // Re = 1000 × 4 × 0.1² / (2000 / √46) = 40 √46 / 2000
    const { reynolds, torqueNm, highTorqueNm, powerW, highPowerW, tipSpeedMPerS } = valueOf(
      torque({ consistencyPaSn: 2000, flowIndex: 0.5 }),
    );
    expect(reynolds).toBeCloseTo((40 * Math.sqrt(46)) / 2000, 12);
    // Laminar, so torque goes with viscosity: the thicker end has k_s 10, (10/11.5)^(−1/2).
    expect(highTorqueNm / torqueNm).toBeCloseTo(1.25 * Math.sqrt(1.15), 3);
    expect(powerW).toBeCloseTo(2 * Math.PI * 4 * torqueNm, 9);
    expect(highPowerW).toBeCloseTo(2 * Math.PI * 4 * highTorqueNm, 9);
    expect(tipSpeedMPerS).toBeCloseTo(Math.PI * 0.4, 12);
  });

  it('takes the upper shear rate where the liquid thickens with shear', () => {
    const { torqueNm, highTorqueNm } = valueOf(torque({ consistencyPaSn: 2000, flowIndex: 1.5 }));
    expect(highTorqueNm / torqueNm).toBeCloseTo(1.25 * Math.sqrt(13 / 11.5), 3);
  });

  it('says that a viscosity is apparent, and shows the thicker end, for a power law alone', () => {
    const noteOf = (liquid: object) =>
      valueOf(evaluateWithEvidence(impellerTorque, { ...turbine, viscosityPaS: undefined, ...liquid })).steps;
    const law = noteOf({ consistencyPaSn: 2000, flowIndex: 0.5 });
    expect(law[0]?.note).toContain('apparent');
    expect(law.map(({ symbol }) => symbol)).toContain('Re_t');
    const newtonian = noteOf({ viscosityPaS: 1 });
    expect(newtonian[0]?.note).toBeUndefined();
    expect(newtonian.map(({ symbol }) => symbol)).not.toContain('Re_t');
    expect(stepFaults([...law, ...newtonian])).toEqual([]);
  });

  it('asks for a viscosity where a power law is given by half', () => {
    for (const half of [{ flowIndex: 0.5 }, { consistencyPaSn: 1 }]) {
      expect(torque(half)).toMatchObject({ ok: false, error: { field: 'viscosityPaS' } });
      expect(valueOf(torque({ ...half, viscosityPaS: 1 })).reynolds).toBeCloseTo(40, 9);
    }
  });
});

describe('highest speed by hand', () => {
  const ribbon = {
    impeller: 'double helical ribbon',
    impellerDiameterM: 0.19,
    vesselDiameterM: 0.2,
    densityKgPerM3: 1100,
    viscosityPaS: 600,
  } as const;
  const of = (limits: object) => evaluate(highestSpeed, { ...ribbon, ...limits });

  it('by power: P = 1.3 K_L μ N² D³ in laminar flow, K_L 357.41 by Rieger', () => {
    // N = √(50 / (1.3 × 357.41 × 600 × 0.19³)), without the small inertial part
    const { speedPerS, highTorqueNm } = valueOf(of({ powerLimitW: 50 }));
    const closed = Math.sqrt(50 / (1.3 * 357.41 * 600 * 0.19 ** 3));
    expect(speedPerS / closed).toBeCloseTo(1, 3);
    expect(2 * Math.PI * speedPerS * highTorqueNm).toBeCloseTo(50, 9);
  });

  it('by tip speed: u/(π D), whatever else is allowed', () => {
    const { speedPerS, limitedBy } = valueOf(
      of({ tipSpeedLimitMPerS: 0.3, torqueLimitNm: 1e4, speedLimitPerS: 9 }),
    );
    expect(speedPerS).toBeCloseTo(0.3 / (Math.PI * 0.19), 12);
    expect(limitedBy).toBe('tip speed');
  });

  it('says so where a limit is not reached within the range', () => {
    const thin = evaluate(highestSpeed, { ...ribbon, viscosityPaS: 1e-4, torqueLimitNm: 1e12 });
    expect(valueOf(thin)).toMatchObject({ speedPerS: 1000, limitedBy: 'range of the method' });
    expect(
      valueOf(evaluate(highestSpeed, { ...ribbon, torqueLimitNm: 1e12, speedLimitPerS: 5 })).limitedBy,
    ).toBe('speed');
  });

  it.each([
    ['torqueLimitNm', 'N·m'],
    ['powerLimitW', 'W'],
  ])(
    'refuses a %s that the liquid passes at the lowest speed, and never answers above a limit',
    (field, unit) => {
      const outcome = of({ [field]: 1e-12 });
      expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field, given: 1e-12 } });
      expect(!outcome.ok && outcome.error.message).toContain(unit);
    },
  );

  it('can be redone from its steps', () => {
    const { steps } = valueOf(
      evaluateWithEvidence(highestSpeed, { ...ribbon, torqueLimitNm: 20, speedLimitPerS: 5 }),
    );
    expect(stepFaults(steps)).toEqual([]);
    expect(steps.filter(({ symbol }) => symbol === 'N')).toHaveLength(2);
  });
});
