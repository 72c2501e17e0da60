import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { chokedFlowFunction } from './choked-flow-function.js';
import { criticalPressureRatio } from './critical-pressure-ratio.js';
import { gasArea } from './gas-area.js';
import { chokedFlowFunctionOf, criticalPressureRatioOf, subsonicFlowFunctionOf } from './isentropic-flow.js';
import { regulatorFailedOpenFlow } from './regulator-failed-open-flow.js';
import { subsonicFlowFunction } from './subsonic-flow-function.js';

const exponent = fc.double({ min: 1, max: 2, noNaN: true });

describe('flow functions of a gas', () => {
  // Applied Process Design for Chemical and Petrochemical Plants, vol. 1, 3rd ed., table 7-11, p. 462: 735 ψ.
  const ratios = [0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.55, 0.5];
  it.each([
    [1.2, [159.2, 217.6, 257.0, 285.6, 306.5, 321.3, 331.0, 336.0]],
    [1.3, [159.6, 218.7, 259.1, 288.7, 310.8, 326.9, 337.9, 344.4, 346.8]],
    [1.4, [159.9, 219.6, 260.8, 291.4, 314.5, 331.7, 344.0, 351.8, 355.5]],
    [1.6, [160.4, 221.2, 263.7, 295.8, 320.7, 339.8, 354.1, 364.2, 370.2, 372.3]],
  ])('agree with the printed table at k = %d', (k, printed) => {
    printed.forEach((constant, index) => {
      const outcome = evaluate(subsonicFlowFunction, {
        isentropicExponent: k,
        pressureRatio: ratios[index]!,
      });
      if (!outcome.ok) throw new Error(outcome.error.message);
      expect(Math.abs((735 * outcome.value.flowFunction) / constant - 1)).toBeLessThan(1e-3);
    });
  });

  it('give the API 520 coefficient 0.02669 at k = 1.35', () => {
    // fluids 1.3.1, tests/test_safety_valve.py: C = 0.0266941997 in kg/h, mm², kPa; 0.03948 C here.
    expect(0.03948 * chokedFlowFunctionOf(1.35)).toBeCloseTo(0.0266941997, 9);
  });

  it('join at the critical ratio: C = √2 ψ(r_c)', () => {
    fc.assert(
      fc.property(exponent, (k) => {
        const joined = Math.SQRT2 * subsonicFlowFunctionOf(k, criticalPressureRatioOf(k));
        expect(joined / chokedFlowFunctionOf(k)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('are continuous at k = 1, the isothermal limit e^(−1/2)', () => {
    const limit = Math.exp(-0.5);
    for (const k of [1, 1 + 1e-10, 1 + 1e-7]) {
      const ratio = evaluate(criticalPressureRatio, { isentropicExponent: k });
      const flow = evaluate(chokedFlowFunction, { isentropicExponent: k });
      expect(ratio.ok && ratio.value.criticalRatio).toBeCloseTo(limit, 6);
      expect(flow.ok && flow.value.flowFunction).toBeCloseTo(limit, 6);
    }
  });

  it.each([0.999, 2.001])('refuse k = %d', (k) => {
    const outcome = evaluate(criticalPressureRatio, { isentropicExponent: k });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });

  it('refuse a ratio below the critical one', () => {
    const outcome = evaluate(subsonicFlowFunction, { isentropicExponent: 1.4, pressureRatio: 0.528 });
    expect(!outcome.ok && outcome.error.field).toBe('pressureRatio');
  });
});

const gas = {
  massFlowKgPerS: 6.741667,
  temperatureK: 348,
  compressibilityFactor: 0.9,
  molarMassKgPerMol: 0.051,
  isentropicExponent: 1.11,
  inletPressurePaAbs: 670_000,
  dischargeCoefficient: 0.975,
};

const areaOf = (change: object): number => {
  const outcome = evaluate(gasArea, { ...gas, ...change });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.areaM2;
};

describe('relief area for gas', () => {
  it('does not step where the flow becomes critical', () => {
    const critical = criticalPressureRatioOf(1.11) * 670_000;
    expect(
      areaOf({ backPressurePaAbs: critical * (1 + 1e-9) }) /
        areaOf({ backPressurePaAbs: critical * (1 - 1e-9) }),
    ).toBeCloseTo(1, 7);
  });

  it('takes the standard atmosphere where no back pressure is given', () => {
    expect(areaOf({})).toBe(areaOf({ backPressurePaAbs: 101_325 }));
  });

  it('grows with flow and back pressure and falls with inlet pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 2e5, max: 2e7, noNaN: true }),
        fc.double({ min: 0.05, max: 0.98, noNaN: true }),
        (massFlowKgPerS, inletPressurePaAbs, ratio) => {
          const base = { massFlowKgPerS, inletPressurePaAbs, backPressurePaAbs: ratio * inletPressurePaAbs };
          const area = areaOf(base);
          expect(areaOf({ ...base, massFlowKgPerS: 2 * massFlowKgPerS }) / area).toBeCloseTo(2, 9);
          expect(
            areaOf({ ...base, backPressurePaAbs: base.backPressurePaAbs * 1.01 }),
          ).toBeGreaterThanOrEqual(area * (1 - 1e-12));
          expect(areaOf({ ...base, inletPressurePaAbs: inletPressurePaAbs * 1.1 })).toBeLessThan(area);
        },
      ),
    );
  });

  it('refuses a back pressure at the inlet pressure', () => {
    const outcome = evaluate(gasArea, { ...gas, backPressurePaAbs: 670_000 });
    expect(!outcome.ok && outcome.error.field).toBe('backPressurePaAbs');
  });
});

describe('regulator failed open', () => {
  const supply = {
    temperatureK: 293.15,
    molarMassKgPerMol: 0.00201588,
    isentropicExponent: 1.41,
    compressibilityFactor: 1.06,
    upstreamPressurePaAbs: 100e5,
    downstreamPressurePaAbs: 60e5,
    flowCoefficientKv: 0.05,
    pressureDropRatioFactor: 0.7,
  };
  const flowOf = (change: object): number => {
    const outcome = evaluate(regulatorFailedOpenFlow, { ...supply, ...change });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value.massFlowKgPerS;
  };

  it('does not change below the choked pressure and does not step there', () => {
    const choked = 100e5 * (1 - (1.41 / 1.4) * 0.7);
    expect(flowOf({ downstreamPressurePaAbs: 1e5 })).toBe(
      flowOf({ downstreamPressurePaAbs: choked * 0.999 }),
    );
    expect(
      flowOf({ downstreamPressurePaAbs: choked * (1 + 1e-9) }) / flowOf({ downstreamPressurePaAbs: choked }),
    ).toBeCloseTo(1, 9);
  });

  it('is √(2 ρ Δp) times the water flow area for a small pressure drop', () => {
    // K_v by definition: 1 m³/h of water (1000 kg/m³) at 1 bar, so W = K_v √(1000 ρ Δp[bar]) kg/h.
    const density = (100e5 * 0.00201588) / (1.06 * 8.314462618 * 293.15);
    const expected = (0.05 * Math.sqrt(1000 * density * 0.01)) / 3600;
    expect(Math.abs(flowOf({ downstreamPressurePaAbs: 99.99e5 }) / expected - 1)).toBeLessThan(1e-3);
  });

  it('rises with supply pressure', () => {
    fc.assert(
      fc.property(fc.double({ min: 61e5, max: 300e5, noNaN: true }), (upstreamPressurePaAbs) => {
        expect(flowOf({ upstreamPressurePaAbs: upstreamPressurePaAbs * 1.01 })).toBeGreaterThan(
          flowOf({ upstreamPressurePaAbs }),
        );
      }),
    );
  });

  it('is nothing at equal pressures, and refuses a supply below', () => {
    expect(flowOf({ downstreamPressurePaAbs: 100e5 })).toBe(0);
    const outcome = evaluate(regulatorFailedOpenFlow, { ...supply, downstreamPressurePaAbs: 101e5 });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });
});
