import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { lineFlow } from './line-flow.js';
import { ventBackPressure } from './vent-back-pressure.js';
import { ventThrust } from './vent-thrust.js';

const air = { molarMassKgPerMol: 0.0289647, isentropicExponent: 1.4, compressibilityFactor: 1 };
const line = {
  ...air,
  upstreamPressurePaAbs: 10e5,
  downstreamPressurePaAbs: 101_325,
  temperatureK: 300,
  lineDiameterM: 0.05,
  totalResistance: 5,
};
const area = (Math.PI / 4) * 0.05 ** 2;
const density = (10e5 * 0.0289647) / (8.314462618 * 300);

const flowOf = (change: object): number => {
  const outcome = evaluate(lineFlow, { ...line, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.massFlowKgPerS;
};

describe('gas flow through a line', () => {
  it('tends to Darcy for a small pressure drop', () => {
    const expected = area * Math.sqrt((2 * density * 100) / 5);
    expect(Math.abs(flowOf({ downstreamPressurePaAbs: 10e5 - 100 }) / expected - 1)).toBeLessThan(1e-3);
  });

  it('is the isothermal closed form where no exponent is given', () => {
    // G² (K + 2 ln(p1/p2)) = p1 ρ1 (1 − (p2/p1)²), isothermal flow with friction.
    const isothermal = { ...line, isentropicExponent: undefined };
    const outcome = evaluate(lineFlow, { ...isothermal, downstreamPressurePaAbs: 8e5 });
    const expected = area * Math.sqrt((10e5 * density * (1 - 0.8 ** 2)) / (5 + 2 * Math.log(1 / 0.8)));
    expect(outcome.ok && outcome.value.massFlowKgPerS / expected).toBeCloseTo(1, 9);
  });

  it('stays within 3 % of the choked limits of the net expansion factor', () => {
    // Crane TP-410 page A-22, k = 1.4: K, Δp/p, Y (from memory, unverified).
    const printed = [
      [1.5, 0.576, 0.606],
      [2, 0.612, 0.622],
      [3, 0.662, 0.639],
      [6, 0.737, 0.671],
      [10, 0.784, 0.695],
      [20, 0.839, 0.71],
      [100, 0.926, 0.71],
    ] as const;
    for (const [totalResistance, drop, y] of printed) {
      const expected = area * y * Math.sqrt((2 * drop * 10e5 * density) / totalResistance);
      expect(
        Math.abs(flowOf({ totalResistance, downstreamPressurePaAbs: 1000 }) / expected - 1),
      ).toBeLessThan(0.03);
    }
  });

  it('never exceeds an ideal nozzle', () => {
    const nozzle = area * 0.684731 * Math.sqrt(10e5 * density);
    expect(flowOf({ totalResistance: 1e-6 })).toBeCloseTo(nozzle, 4);
  });

  it('falls with resistance and with downstream pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (totalResistance, ratio) => {
          const base = { totalResistance, downstreamPressurePaAbs: ratio * 10e5 };
          const flow = flowOf(base);
          expect(flow).toBeGreaterThan(0);
          expect(flowOf({ ...base, totalResistance: totalResistance * 1.1 })).toBeLessThanOrEqual(flow);
          expect(flowOf({ ...base, downstreamPressurePaAbs: ratio * 10.05e5 * 0.999 })).toBeLessThanOrEqual(
            flow * (1 + 1e-9),
          );
        },
      ),
    );
  });

  it('takes a density instead of temperature and molar mass, and says when both are missing', () => {
    const bare = { ...line, temperatureK: undefined, molarMassKgPerMol: undefined };
    const outcome = evaluate(lineFlow, { ...bare, upstreamDensityKgPerM3: density });
    expect(outcome.ok && outcome.value.massFlowKgPerS).toBeCloseTo(flowOf({}), 12);
    const without = evaluate(lineFlow, bare);
    expect(!without.ok && without.error.field).toBe('upstreamDensityKgPerM3');
  });

  it('is nothing without a pressure drop, and refuses a rise', () => {
    expect(flowOf({ downstreamPressurePaAbs: 10e5 })).toBe(0);
    expect(evaluate(lineFlow, { ...line, downstreamPressurePaAbs: 11e5 }).ok).toBe(false);
  });
});

const vent = { ...air, temperatureK: 400, lineDiameterM: 0.05, lineLengthM: 6, fittingResistance: 1.5 };

const backPressureOf = (change: object) => {
  const outcome = evaluate(ventBackPressure, { ...vent, massFlowKgPerS: 0.2, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('vent line', () => {
  it('inverts the line flow: the back pressure drives the same flow through the same line', () => {
    for (const massFlowKgPerS of [0.001, 0.05, 0.2, 0.5, 2]) {
      const { backPressurePaAbs, frictionFactor } = backPressureOf({ massFlowKgPerS });
      const resistance = (frictionFactor * 6) / 0.05 + 1.5;
      // Static temperature in front of the line, from the stagnation temperature and the static Mach number.
      let temperatureK = 400;
      for (let pass = 0; pass < 50; pass += 1) {
        const rho = (backPressurePaAbs * 0.0289647) / (8.314462618 * temperatureK);
        const velocity = massFlowKgPerS / (rho * area);
        temperatureK = 400 - (velocity ** 2 * 0.4 * 0.0289647) / (2 * 1.4 * 8.314462618);
      }
      const again = flowOf({
        upstreamPressurePaAbs: backPressurePaAbs,
        temperatureK,
        totalResistance: resistance,
      });
      expect(again / massFlowKgPerS).toBeCloseTo(1, 6);
    }
  });

  it('has the fully rough friction factor of 2 inch steel pipe, 0.019', () => {
    // Crane TP-410 page A-26, complete turbulence, 2 inch: f_T 0.019 (from memory, unverified).
    expect(backPressureOf({ lineDiameterM: 0.0525 }).frictionFactor).toBeCloseTo(0.019, 3);
  });

  it('rises with flow and length, and chokes at the end in the end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (massFlowKgPerS, lineLengthM) => {
          const base = backPressureOf({ massFlowKgPerS, lineLengthM });
          expect(base.backPressurePaAbs).toBeGreaterThanOrEqual(101_325 * (1 - 1e-9));
          expect(base.exitMach).toBeLessThanOrEqual(1);
          expect(
            backPressureOf({ massFlowKgPerS: massFlowKgPerS * 1.1, lineLengthM }).backPressurePaAbs,
          ).toBeGreaterThan(base.backPressurePaAbs * (1 - 1e-9));
          expect(
            backPressureOf({ massFlowKgPerS, lineLengthM: lineLengthM + 1 }).backPressurePaAbs,
          ).toBeGreaterThan(base.backPressurePaAbs * (1 - 1e-9));
        },
      ),
    );
  });

  it('refuses a wall rougher than a tenth of the bore', () => {
    const outcome = evaluate(ventBackPressure, {
      ...vent,
      massFlowKgPerS: 0.1,
      lineDiameterM: 0.004,
      roughnessM: 5e-4,
    });
    expect(!outcome.ok && outcome.error.field).toBe('roughnessM');
  });

  it('gives the printed thrust in critical flow: 129 W √(k T/((k + 1) M)) + 0.1 A p', () => {
    // API 520 part II: W kg/s, T K, M kg/kmol, A mm², p bar over atmosphere at the end (from memory, unverified).
    const outcome = evaluate(ventThrust, {
      ...air,
      temperatureK: 400,
      lineDiameterM: 0.05,
      massFlowKgPerS: 2,
    });
    if (!outcome.ok) throw new Error(outcome.error.message);
    const { forceN, exitPressurePaAbs, designForceN } = outcome.value;
    const printed =
      129 * 2 * Math.sqrt((1.4 * 400) / (2.4 * 28.9647)) +
      0.1 * area * 1e6 * ((exitPressurePaAbs - 101_325) / 1e5);
    expect(exitPressurePaAbs).toBeGreaterThan(101_325);
    expect(Math.abs(forceN / printed - 1)).toBeLessThan(1e-3);
    expect(designForceN).toBe(2 * forceN);
  });

  it('is W u for a slow stream and nothing without flow', () => {
    const slow = evaluate(ventThrust, {
      ...air,
      temperatureK: 300,
      lineDiameterM: 0.05,
      massFlowKgPerS: 0.001,
    });
    const rho = (101_325 * 0.0289647) / (8.314462618 * 300);
    expect(slow.ok && slow.value.forceN).toBeCloseTo(0.001 ** 2 / (rho * area), 8);
    const none = evaluate(ventThrust, { ...air, temperatureK: 300, lineDiameterM: 0.05, massFlowKgPerS: 0 });
    expect(none.ok && none.value.forceN).toBe(0);
  });
});
