import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { approachLogarithm } from './approach.js';
import { batchTimeIsothermal } from './batch-time-isothermal.js';
import { heatTransferFluid, heatTransferFluids } from './heat-transfer-fluid.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('a heat transfer fluid between two tabulated temperatures', () => {
  const pairs = heatTransferFluids.flatMap(({ name, points }) =>
    points.slice(1).map((right, index) => [name, points[index]!, right] as const),
  );

  it.each(pairs.filter((_pair, index) => index % 5 === 0))('%s', (fluid, left, right) => {
    const at = (temperatureK: number) => valueOf(evaluate(heatTransferFluid, { fluid, temperatureK }));
    // Halfway in 1/T, where ln μ is halfway too: the geometric mean.
    const harmonic = 2 / (1 / left.temperatureK + 1 / right.temperatureK);
    expect(at(harmonic).viscosityPaS / Math.sqrt(left.viscosityPaS * right.viscosityPaS)).toBeCloseTo(1, 9);
    const middle = at((left.temperatureK + right.temperatureK) / 2);
    for (const field of ['densityKgPerM3', 'heatCapacityJPerKgK', 'conductivityWPerMK'] as const) {
      expect(middle[field] / ((left[field] + right[field]) / 2)).toBeCloseTo(1, 9);
    }
    expect(at(left.temperatureK).viscosityPaS / left.viscosityPaS).toBeCloseTo(1, 12);
  });

  it('is found with blanks around its name, and not by another one', () => {
    const { name, points } = heatTransferFluids[0]!;
    const temperatureK = points[0]!.temperatureK;
    expect(evaluate(heatTransferFluid, { fluid: `  ${name.toUpperCase()} `, temperatureK }).ok).toBe(true);
    const unknown = evaluate(heatTransferFluid, { fluid: 'honey', temperatureK });
    expect(unknown).toMatchObject({ ok: false, error: { code: 'CALC_UNKNOWN_SUBSTANCE', field: 'fluid' } });
    expect(!unknown.ok && unknown.error.message).toContain(name);
    const last = points.at(-1)!.temperatureK;
    expect(evaluate(heatTransferFluid, { fluid: name, temperatureK: last + 1 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'temperatureK' },
    });
  });
});

describe('an end temperature', () => {
  const course = (start: number, end: number, medium: number) =>
    approachLogarithm({ startTemperatureK: start, endTemperatureK: end, mediumTemperatureK: medium });

  it.each([
    // ln((400 − 300)/(400 − 350)) = ln 2, heating and cooling alike
    ['on the way up', 300, 350, 400, Math.log(2)],
    ['on the way down', 400, 350, 300, Math.log(2)],
    ['at the start', 300, 300, 400, 0],
    ['at the start, medium too', 300, 300, 300, 0],
  ])('%s is reached', (_words, start, end, medium, expected) => {
    expect(valueOf(course(start, end, medium))).toBeCloseTo(expected, 12);
  });

  it.each([
    ['at the medium', 300, 400, 400],
    ['beyond it', 300, 401, 400],
    ['behind the start', 300, 299, 400],
    ['at the medium, cooling', 400, 300, 300],
    ['beyond it, cooling', 400, 299, 300],
    ['behind the start, cooling', 400, 401, 300],
    ['away from a medium as warm as the batch', 300, 301, 300],
  ])('%s is never reached', (_words, start, end, medium) => {
    expect(course(start, end, medium)).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'endTemperatureK' },
    });
    expect(
      evaluate(batchTimeIsothermal, {
        startTemperatureK: start,
        endTemperatureK: end,
        mediumTemperatureK: medium,
        batchMassKg: 1,
        heatCapacityJPerKgK: 4000,
        overallCoefficientWPerM2K: 300,
        areaM2: 0.1,
      }).ok,
    ).toBe(false);
  });
});
