import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { batchTimeFlowingMedium } from './batch-time-flowing-medium.js';
import {
  type Circulator,
  mediumSetPoint,
  powerAt,
  temperingRates,
  type TemperedBatch,
} from './circulator.js';
import { circulatorCurve } from './circulator-curve.js';
import { heatUp } from './heat-up.js';
import { firstTime } from './integrate-curve.js';

type Inputs = Parameters<typeof evaluate<typeof circulatorCurve.inputs, typeof circulatorCurve.outputs>>[1];

const strong = [{ temperatureK: 300, heatingW: 1e7, coolingW: 1e7 }];

const base: Inputs = {
  batchMassKg: 5,
  heatCapacityJPerKgK: 2200,
  vesselMassKg: 20,
  startTemperatureK: 293.15,
  endTemperatureK: 423.15,
  overallCoefficientWPerM2K: 300,
  areaM2: 0.12,
  circulatorPowers: [
    { temperatureK: 233, heatingW: 2000, coolingW: 200 },
    { temperatureK: 293, heatingW: 2000, coolingW: 1200 },
    { temperatureK: 473, heatingW: 1800, coolingW: 1200 },
  ],
  mediumFlowKgPerS: 0.2,
  mediumHeatCapacityJPerKgK: 2000,
  mediumMassKg: 5,
  lowestMediumTemperatureK: 243,
  highestMediumTemperatureK: 463,
  lossWPerK: 0.5,
  durationS: 7200,
};

const curve = (change: Partial<Inputs>) => {
  const outcome = evaluate(circulatorCurve, { ...base, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

/** A circulator whose medium stands at a temperature from the start: the closed forms hold for it. */
const atOnce = (mediumK: number): Partial<Inputs> => ({
  circulatorPowers: strong,
  mediumStartTemperatureK: mediumK,
  lossWPerK: 0,
  vesselMassKg: 0,
});

const reachedTime = ({ timesS, temperaturesK }: ReturnType<typeof curve>, temperatureK: number): number => {
  const rising = temperaturesK.at(-1)! > temperaturesK[0]!;
  return firstTime({ timesS, values: temperaturesK }, (t) => (rising ? temperatureK - t : t - temperatureK))!;
};

describe('the curve of a circulator agrees with the closed forms where they hold', () => {
  const medium = {
    batchMassKg: 5,
    heatCapacityJPerKgK: 2200,
    overallCoefficientWPerM2K: 300,
    areaM2: 0.12,
    mediumFlowKgPerS: 0.02,
    mediumHeatCapacityJPerKgK: 2000,
  };

  it.each([
    ['heating', 293.15, 423.15, 463],
    ['cooling', 423.15, 303.15, 263],
  ])('%s by a medium of constant inlet temperature: Kern ch. 18', (_words, start, end, mediumK) => {
    // The set point leads the batch by ten times what it lacks, so it stays at its limit till 16 K before the end.
    const reached = start + 0.8 * (end - start);
    const closed = evaluate(batchTimeFlowingMedium, {
      ...medium,
      startTemperatureK: start,
      endTemperatureK: reached,
      mediumInletTemperatureK: mediumK,
    });
    const result = curve({
      ...atOnce(mediumK),
      ...medium,
      startTemperatureK: start,
      endTemperatureK: end,
      lowestMediumTemperatureK: 263,
      highestMediumTemperatureK: 463,
      points: 1000,
    });
    expect(reachedTime(result, reached) / (closed.ok ? closed.value.timeS : NaN)).toBeCloseTo(1, 4);
  });

  it('heating by power alone: energy over power, batch, vessel and medium together', () => {
    const result = curve({
      circulatorPowers: [{ temperatureK: 300, heatingW: 1500, coolingW: 0 }],
      overallCoefficientWPerM2K: 1e5,
      mediumFlowKgPerS: 50,
      highestMediumTemperatureK: 600,
      lossWPerK: 0,
      points: 1000,
    });
    // (5 × 2200 + 20 × 500 + 5 × 2000) J/K × 100 K, and what the medium leads by, over 1500 W.
    const exchange = 1e5 * (1 - Math.exp(-0.12));
    const lead = (1500 * 21_000) / 31_000 / exchange;
    expect(reachedTime(result, 393.15)).toBeCloseTo((31_000 * 100 + 10_000 * lead) / 1500, 1);
  });

  it('power first and transfer after it, with losses: heat.heatUp with the same limits', () => {
    // Little medium, much flow, a quick controller: the circulator becomes the closed form's source of heat.
    const limits = { overallCoefficientWPerM2K: 300, areaM2: 0.12 };
    const closed = evaluate(heatUp, {
      batchMassKg: 5,
      heatCapacityJPerKgK: 2200,
      startTemperatureK: 293.15,
      endTemperatureK: 400,
      heaterPowerW: 3000,
      mediumTemperatureK: 463,
      lossWPerK: 2,
      ...limits,
    });
    const result = curve({
      ...limits,
      vesselMassKg: 0,
      lossWPerK: 2,
      circulatorPowers: [{ temperatureK: 300, heatingW: 3000, coolingW: 1e5 }],
      mediumFlowKgPerS: 100,
      mediumMassKg: 0.005,
      controlTimeConstantS: 2,
      mediumStartTemperatureK: 293.15 + 3000 / 36,
      durationS: 900,
      points: 400,
    });
    expect(reachedTime(result, 400) / (closed.ok ? closed.value.timeS : NaN)).toBeCloseTo(1, 2);
  });
});

const circulator: Circulator = {
  powers: base.circulatorPowers,
  pumpW: 80,
  capacityJPerK: 10_000,
  lossWPerK: 1,
  lowestK: 243,
  highestK: 463,
  timeConstantS: 60,
};
const batch: TemperedBatch = {
  capacityJPerK: 21_000,
  lossWPerK: 0.5,
  reactionW: 100,
  exchangeWPerK: 35,
  ambientK: 293.15,
  targetK: 423.15,
  differenceK: Infinity,
};

describe('the curve of a circulator', () => {
  it('is what classical Runge–Kutta steps of 0.2 s give', () => {
    let state: [number, number] = [293.15, 293.15];
    const h = 0.2;
    const moved = (by: [number, number], share: number): [number, number] => [
      state[0] + share * by[0],
      state[1] + share * by[1],
    ];
    for (let step = 0; step < 6000; step += 1) {
      const k1 = temperingRates(circulator, batch, state);
      const k2 = temperingRates(circulator, batch, moved(k1, h / 2));
      const k3 = temperingRates(circulator, batch, moved(k2, h / 2));
      const k4 = temperingRates(circulator, batch, moved(k3, h));
      state = [0, 1].map((i) => state[i]! + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!)) as [
        number,
        number,
      ];
    }
    // ε W c = 35 W/K with W c = 400 W/K.
    const conductance = -400 * Math.log(1 - 35 / 400);
    const result = curve({
      overallCoefficientWPerM2K: conductance,
      areaM2: 1,
      pumpPowerW: 80,
      mediumLossWPerK: 1,
      heatOfReactionW: 100,
      durationS: 1200,
    });
    expect(result.temperaturesK.at(-1)).toBeCloseTo(state[0], 3);
    expect(result.mediumTemperaturesK.at(-1)).toBeCloseTo(state[1], 3);
  });

  it('ends at its target, losses and reaction or not, heated or cooled', () => {
    for (const change of [
      {},
      { heatOfReactionW: 300, lossWPerK: 0 },
      { startTemperatureK: 423.15, endTemperatureK: 283.15, durationS: 14_400 },
      { pumpPowerW: 100, mediumLossWPerK: 2 },
    ]) {
      const result = curve(change);
      const target = { ...base, ...change }.endTemperatureK;
      expect(result.temperaturesK.at(-1)).toBeCloseTo(target, 2);
      expect(result.reachedAfterS).toBeLessThan({ ...base, ...change }.durationS);
    }
  });

  it('keeps medium and power within their limits', () => {
    const limits = { heatingW: 2000, coolingW: 1200 };
    for (const change of [{}, { startTemperatureK: 423.15, endTemperatureK: 263.15 }]) {
      const { powersW, mediumTemperaturesK } = curve(change);
      expect(Math.max(...powersW)).toBeLessThanOrEqual(limits.heatingW);
      expect(Math.min(...powersW)).toBeGreaterThanOrEqual(-limits.coolingW);
      expect(Math.max(...mediumTemperaturesK)).toBeLessThanOrEqual(463 + 1e-6);
      expect(Math.min(...mediumTemperaturesK)).toBeGreaterThanOrEqual(243 - 1e-6);
    }
  });

  it('keeps the difference for glass, and says the largest one', () => {
    const gentle = curve({ differenceLimitK: 20, circulatorPowers: strong, highestMediumTemperatureK: 463 });
    expect(gentle.highestDifferenceK).toBeLessThanOrEqual(20 + 1e-6);
    expect(curve({}).highestDifferenceK).toBeGreaterThan(25);
    expect(gentle.reachedAfterS ?? Infinity).toBeGreaterThan(
      curve({ circulatorPowers: strong }).reachedAfterS!,
    );
  });

  it('cools slower where the cooling power falls with temperature', () => {
    const cooled = { startTemperatureK: 293.15, endTemperatureK: 253.15, durationS: 14_400 };
    const falling = curve(cooled);
    const constant = curve({
      ...cooled,
      circulatorPowers: base.circulatorPowers.map((point) => ({ ...point, coolingW: 1200 })),
    });
    expect(falling.reachedAfterS!).toBeGreaterThan(constant.reachedAfterS!);
  });

  it('does not say when an end is reached that is not', () => {
    expect(curve({ durationS: 600 }).reachedAfterS).toBeUndefined();
    expect(curve({ endTemperatureK: 293.65 }).reachedAfterS).toBe(0);
  });

  it('is reached sooner with more power', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 500, max: 5000, noNaN: true }),
        fc.double({ min: 1.1, max: 3, noNaN: true }),
        (power, factor) => {
          const time = (heatingW: number) =>
            curve({
              circulatorPowers: [{ temperatureK: 300, heatingW, coolingW: 500 }],
              durationS: 36_000,
              points: 200,
            }).reachedAfterS!;
          expect(time(power * factor)).toBeLessThanOrEqual(time(power));
        },
      ),
      { numRuns: 20 },
    );
  });

  it.each([
    ['highestMediumTemperatureK', { highestMediumTemperatureK: 243 }],
    ['circulatorPowers', { lowestMediumTemperatureK: 230 }],
    ['circulatorPowers', { highestMediumTemperatureK: 474 }],
    [
      'circulatorPowers',
      {
        circulatorPowers: [
          { temperatureK: 500, heatingW: 1, coolingW: 1 },
          { temperatureK: 500, heatingW: 1, coolingW: 1 },
        ],
      },
    ],
  ])('names %s where it does not fit', (field, change) => {
    expect(evaluate(circulatorCurve, { ...base, ...change })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field },
    });
  });

  it('stops at a system too stiff for the integrator, and says what helps', () => {
    const outcome = evaluate(circulatorCurve, {
      ...base,
      mediumMassKg: 1e-9,
      controlTimeConstantS: 1e-6,
      durationS: 1e6,
    });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_NOT_CONVERGED', field: 'durationS' } });
  });

  it('shows the exchange and the end', () => {
    const evidence = evaluateWithEvidence(circulatorCurve, base);
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual(['ε W c', 'T(t_e)']);
    // W c = 400, U A = 36: 400 (1 − e^−0.09) = 34.4276
    expect(evidence.ok && evidence.value.steps[0]?.value).toBeCloseTo(34.4276, 3);
  });
});

describe('the power of a circulator', () => {
  it.each([
    [200, 2000, 200],
    [233, 2000, 200],
    [263, 2000, 700],
    [293, 2000, 1200],
    [383, 1900, 1200],
    [473, 1800, 1200],
    [500, 1800, 1200],
  ])('at %d K is %d W heating and %d W cooling', (temperatureK, heatingW, coolingW) => {
    const power = powerAt(base.circulatorPowers, temperatureK);
    expect(power.heatingW).toBeCloseTo(heatingW, 9);
    expect(power.coolingW).toBeCloseTo(coolingW, 9);
  });
});

describe('the set point of the medium', () => {
  it('holds the batch against losses and reaction once it is there', () => {
    // 423.15 + (0.5 × 130 − 100)/35
    expect(mediumSetPoint(circulator, batch, 423.15)).toBeCloseTo(422.15, 9);
  });

  it('leads the batch, up to the limits', () => {
    expect(mediumSetPoint(circulator, batch, 422.15)).toBeCloseTo(432.15, 9);
    expect(mediumSetPoint(circulator, batch, 300)).toBe(463);
    expect(mediumSetPoint(circulator, { ...batch, targetK: 260 }, 400)).toBe(243);
    expect(mediumSetPoint(circulator, { ...batch, differenceK: 30 }, 300)).toBe(330);
  });
});
