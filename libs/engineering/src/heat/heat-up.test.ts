import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { batchTimeIsothermal } from './batch-time-isothermal.js';
import { heatUp } from './heat-up.js';
import { heatUpCurve } from './heat-up-curve.js';

const batch = {
  batchMassKg: 5,
  heatCapacityJPerKgK: 2200,
  startTemperatureK: 293.15,
  endTemperatureK: 423.15,
};
const jacket = { overallCoefficientWPerM2K: 300, areaM2: 0.12, mediumTemperatureK: 463.15 };

const time = (inputs: object): number => {
  const outcome = evaluate(heatUp, { ...batch, ...inputs });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.timeS;
};

describe('heating time', () => {
  it('is energy over power without loss, vessel included', () => {
    // (5 × 2200 + 35 × 500) × 130 / 1500 = 2470 s
    expect(time({ vesselMassKg: 35, heaterPowerW: 1500 })).toBeCloseTo(2470, 6);
  });

  it('is that of Kern with a jacket and no loss', () => {
    const kern = evaluate(batchTimeIsothermal, { ...batch, ...jacket });
    expect(time(jacket)).toBeCloseTo(kern.ok ? kern.value.timeS : NaN, 6);
  });

  it('lies between the longer of both limits and their sum where both work', () => {
    const [power, transfer, both] = [
      time({ heaterPowerW: 3000 }),
      time(jacket),
      time({ ...jacket, heaterPowerW: 3000 }),
    ];
    expect(both).toBeGreaterThan(Math.max(power, transfer));
    expect(both).toBeLessThan(power + transfer);
    expect(evaluate(heatUp, { ...batch, ...jacket, heaterPowerW: 3000 })).toMatchObject({
      ok: true,
      value: { limitedBy: 'both' },
    });
  });

  it('has no end where the loss eats the power, and says what is missing', () => {
    const outcome = evaluate(heatUp, { ...batch, heaterPowerW: 100, lossWPerK: 1 });
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'endTemperatureK' },
    });
    expect(outcome.ok ? '' : outcome.error.message).toContain('30 W are missing');
  });

  it('asks for what heats', () => {
    expect(evaluate(heatUp, batch)).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'heaterPowerW' },
    });
    expect(evaluate(heatUp, { ...batch, areaM2: 1 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'overallCoefficientWPerM2K' },
    });
  });

  it('grows with loss and is finite or a coded error', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.boolean(),
        (lossWPerK, heaterPowerW, jacketed) => {
          const inputs = { ...batch, ...(jacketed ? jacket : {}), heaterPowerW };
          const [less, more] = [
            evaluate(heatUp, { ...inputs, lossWPerK }),
            evaluate(heatUp, { ...inputs, lossWPerK: lossWPerK + 1 }),
          ];
          if (less.ok && more.ok) expect(more.value.timeS).toBeGreaterThan(less.value.timeS);
          if (!less.ok) expect(less.error.code).toBe('CALC_OUT_OF_RANGE');
          if (!less.ok) expect(more.ok).toBe(false);
        },
      ),
      { seed: 12 },
    );
  });
});

describe('heating curve', () => {
  it.each([
    ['heater with loss', { heaterPowerW: 1500, lossWPerK: 3, vesselMassKg: 35 }],
    ['jacket', jacket],
    ['jacket with limited power and loss', { ...jacket, heaterPowerW: 3000, lossWPerK: 2 }],
  ])('meets the closed form: %s', (_words, heating) => {
    const closed = time(heating);
    const curve = evaluate(heatUpCurve, { ...batch, ...heating, durationS: closed, points: 101 });
    if (!curve.ok) throw new Error(curve.error.message);
    expect(curve.value.temperaturesK).toHaveLength(101);
    expect(curve.value.temperaturesK.at(-1)).toBeCloseTo(batch.endTemperatureK, 3);
  });

  it('runs away from the medium where reaction heat is set free', () => {
    const curve = (heatOfReactionW: number) => {
      const outcome = evaluate(heatUpCurve, { ...batch, ...jacket, heatOfReactionW, durationS: 20_000 });
      return outcome.ok ? outcome.value.temperaturesK.at(-1)! : NaN;
    };
    expect(curve(0)).toBeCloseTo(463.15, 2);
    // stationary: U A (T − T_m) = Q_r, 36 W/K
    expect(curve(360)).toBeCloseTo(473.15, 2);
  });

  it('says when the end is not reached within the duration', () => {
    const outcome = evaluate(heatUpCurve, { ...batch, heaterPowerW: 100, durationS: 60 });
    expect(outcome.ok && outcome.value.reachedAfterS).toBeUndefined();
  });
});
