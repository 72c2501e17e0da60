import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { canEddyLoss } from './can-eddy-loss.js';
import { deratedTorque, magnetKinds } from './derated-torque.js';
import { magnetDerating } from './magnet-derating.js';
import table from './magnets.json' with { type: 'json' };
import { shaftCriticalSpeed, tipMassShare } from './shaft-critical-speed.js';

describe('coupling.deratedTorque', () => {
  const torque = (change: object) => {
    const outcome = evaluate(deratedTorque, {
      magnet: 'NdFeB',
      ratedTorqueNm: 10,
      temperatureK: 293.15,
      ...change,
    });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('lists each magnet once', () => {
    expect(table.rows.map(({ magnet }) => magnet)).toEqual([...magnetKinds]);
  });

  it('is the rated torque over the service factor where it is rated, and colder no more', () => {
    expect(torque({}).workingTorqueNm).toBeCloseTo(10 / 1.5, 12);
    expect(torque({ temperatureK: 250 }).slipTorqueNm).toBe(10);
    expect(torque({ serviceFactor: 1 }).workingTorqueNm).toBe(10);
  });

  it('falls with temperature up to the limit of the magnet, and has no answer above', () => {
    for (const { magnet, highestTemperatureK } of table.rows) {
      const at = (temperatureK: number) =>
        evaluate(deratedTorque, { magnet: magnet as 'NdFeB', ratedTorqueNm: 10, temperatureK });
      const [warm, hot] = [at(350), at(highestTemperatureK)];
      expect(warm.ok && hot.ok && hot.value.slipTorqueNm < warm.value.slipTorqueNm).toBe(true);
      expect(at(highestTemperatureK + 0.1)).toMatchObject({
        ok: false,
        error: { code: 'CALC_OUT_OF_RANGE', field: 'temperatureK' },
      });
    }
  });

  it('keeps more of samarium cobalt than of neodymium', () => {
    expect(torque({ magnet: 'Sm2Co17', temperatureK: 420 }).torqueFactor).toBeGreaterThan(
      torque({ temperatureK: 420 }).torqueFactor,
    );
  });
});

describe('coupling.magnetDerating', () => {
  it('has no answer where the remanence would be gone', () => {
    expect(
      evaluate(magnetDerating, { temperatureCoefficientPercentPerK: -0.5, temperatureRiseK: 200 }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'temperatureRiseK' } });
    expect(
      evaluate(magnetDerating, { temperatureCoefficientPercentPerK: -0.5, temperatureRiseK: 199 }).ok,
    ).toBe(true);
  });
});

describe('coupling.canEddyLoss', () => {
  it('grows with the square of speed and flux density', () => {
    const loss = (speedPerS: number, peakFluxDensityT: number) => {
      const outcome = evaluate(canEddyLoss, {
        canThicknessM: 0.0015,
        canDiameterM: 0.06,
        activeLengthM: 0.05,
        peakFluxDensityT,
        speedPerS,
        resistivityOhmM: 1.25e-6,
      });
      return outcome.ok ? outcome.value.powerW : NaN;
    };
    expect(loss(20, 0.5) / loss(10, 0.5)).toBeCloseTo(4, 12);
    expect(loss(10, 1) / loss(10, 0.5)).toBeCloseTo(4, 12);
    expect(loss(0, 0.5)).toBe(0);
  });
});

const steel = { elasticModulusPa: 200e9, densityKgPerM3: 7850 };

/** Tip mass share by summing the square of the beam's shape, from the formulas of its two parts. */
const summedShare = (a: number, L: number): number => {
  const steps = 20_000;
  const tip = 2 * L * L * (L + a);
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const x = ((i + 0.5) * L) / steps;
    sum += (((2 * L * a * x + 3 * L * x * x - x ** 3) / tip) ** 2 * L) / steps;
    const s = ((i + 0.5) * a) / steps;
    if (a > 0) sum += ((((L / a) * s * (a * a - s * s)) / tip) ** 2 * a) / steps;
  }
  return sum / L;
};

describe('coupling.shaftCriticalSpeed', () => {
  const speed = (change: object) => {
    const outcome = evaluate(shaftCriticalSpeed, {
      overhangM: 0.6,
      bearingSpanM: 0.15,
      diameterM: 0.025,
      tipMassKg: 1.2,
      ...steel,
      ...change,
    });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('is within 1.5 % of the exact speed of a built-in bar without tip mass: 3.516 √(E I/(ρ A L⁴))', () => {
    // Timoshenko, Vibration Problems in Engineering: first root of the cantilever, β L = 1.875.
    const exact = (1.8751 ** 2 / (2 * Math.PI)) * Math.sqrt((200e9 * 0.025 ** 2) / 16 / (7850 * 0.6 ** 4));
    const found = speed({ bearingSpanM: 0, tipMassKg: 0 }).criticalSpeedPerS;
    expect(found / exact).toBeGreaterThan(1);
    expect(found / exact).toBeLessThan(1.015);
  });

  it('is that of a spring and a mass where the tip mass is large', () => {
    const { criticalSpeedPerS, tipStiffnessNPerM } = speed({ tipMassKg: 1e6 });
    expect(criticalSpeedPerS).toBeCloseTo(Math.sqrt(tipStiffnessNPerM / 1e6) / (2 * Math.PI), 6);
  });

  it('counts the share of the shaft that its shape gives', () => {
    expect(tipMassShare(0)).toBeCloseTo(33 / 140, 12);
    for (const span of [0.1, 0.5, 1, 3]) expect(tipMassShare(span)).toBeCloseTo(summedShare(span, 1), 6);
  });

  it('deflects as an overhanging beam: F L² (L + a)/(3 E I)', () => {
    const I = (Math.PI / 64) * 0.025 ** 4;
    expect(speed({ lateralForceN: 100 }).tipDeflectionM).toBeCloseTo(
      (100 * 0.36 * 0.75) / (3 * 200e9 * I),
      12,
    );
  });

  it('falls with length and mass, and allows 70 % unless told otherwise, never above 80 %', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 10, noNaN: true }), (more) => {
        const base = speed({}).criticalSpeedPerS;
        expect(speed({ overhangM: 0.6 * more }).criticalSpeedPerS).toBeLessThan(base);
        expect(speed({ tipMassKg: 1.2 * more }).criticalSpeedPerS).toBeLessThan(base);
      }),
    );
    const { criticalSpeedPerS, highestSpeedPerS } = speed({});
    expect(highestSpeedPerS).toBeCloseTo(0.7 * criticalSpeedPerS, 12);
    expect(
      evaluate(shaftCriticalSpeed, {
        overhangM: 0.6,
        bearingSpanM: 0.15,
        diameterM: 0.025,
        tipMassKg: 1.2,
        ...steel,
        speedFraction: 0.81,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'speedFraction' } });
  });

  it('takes a hollow shaft, but not one without wall', () => {
    expect(speed({ innerDiameterM: 0.015 }).tipStiffnessNPerM).toBeLessThan(speed({}).tipStiffnessNPerM);
    expect(
      evaluate(shaftCriticalSpeed, {
        overhangM: 0.6,
        bearingSpanM: 0,
        diameterM: 0.025,
        innerDiameterM: 0.025,
        tipMassKg: 0,
        ...steel,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'innerDiameterM' } });
  });

  it('shows its steps', () => {
    const evidence = evaluateWithEvidence(shaftCriticalSpeed, {
      overhangM: 0.6,
      bearingSpanM: 0.15,
      diameterM: 0.025,
      tipMassKg: 1.2,
      ...steel,
    });
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'I',
      'k',
      'm',
      'N_c',
      'N_max',
    ]);
  });
});
