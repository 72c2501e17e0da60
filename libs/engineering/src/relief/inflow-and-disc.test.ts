import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { discWindow } from './disc-window.js';
import { dischargedArea } from './discharged-area.js';
import { gasArea } from './gas-area.js';
import { worstInflow } from './worst-inflow.js';

const supply = {
  supplyPressurePaAbs: 151e5,
  flowCoefficientKv: 0.06,
  pressureDropRatioFactor: 0.7,
  gasTemperatureK: 293.15,
  gasMolarMassKgPerMol: 0.0280134,
  gasIsentropicExponent: 1.4,
  gasCompressibilityFactor: 1,
};
const fire = {
  wettedAreaM2: 0.4,
  heatOfVaporisationJPerKg: 8e5,
  vapourMolarMassKgPerMol: 0.046,
  vapourIsentropicExponent: 1.13,
  relievingTemperatureK: 450,
};
const expansion = {
  heatInputW: 3000,
  liquidExpansionPerK: 1.1e-3,
  liquidHeatCapacityJPerKgK: 2400,
  liquidDensityKgPerM3: 790,
};
const heater = { ...fire, wettedAreaM2: undefined, heaterPowerW: 6000 };
const worst = (inputs: object) => {
  const outcome = evaluate(worstInflow, { relievingPressurePaAbs: 61e5, ...inputs });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('worst inflow', () => {
  it.each([
    ['gas supply', { flowCoefficientKv: 1e3 }],
    ['fire', { wettedAreaM2: 1e3 }],
    ['heater runaway', { heaterPowerW: 1e9 }],
    ['thermal expansion', { heatInputW: 1e10 }],
  ])('is governed by any scenario that is made the worst: %s', (governing, change) => {
    const small = { ...supply, ...fire, ...expansion, flowCoefficientKv: 1e-6, heaterPowerW: 1 };
    const found = worst({ ...small, ...change });
    expect(found.governing).toBe(governing);
    const own = {
      'gas supply': found.gasSupplyAreaM2,
      fire: found.fireAreaM2,
      'heater runaway': found.heaterAreaM2,
      'thermal expansion': found.expansionAreaM2,
    };
    expect(found.areaM2).toBe(own[governing as keyof typeof own]);
    expect(worst(small).areaM2).toBeLessThan(found.areaM2!);
  });

  it('says in its last step what governs, or that nothing could be computed', () => {
    const lastOf = (inputs: object) => {
      const evidence = evaluateWithEvidence(worstInflow, { relievingPressurePaAbs: 61e5, ...inputs });
      if (!evidence.ok) throw new Error(evidence.error.message);
      return evidence.value.steps.at(-1);
    };
    expect(lastOf(fire)).toMatchObject({
      symbol: 'A',
      note: expect.stringMatching(/^fire governs\. A runaway/u) as string,
    });
    expect(lastOf(fire)?.substituted).toMatch(/^fire 0\.\d+$/u);
    expect(lastOf({})).toMatchObject({ value: 'none', substituted: 'no scenario has all of its inputs' });
  });

  it('computes each scenario whose inputs are given, and takes the largest area', () => {
    const found = worst({ ...supply, ...fire, ...expansion, heaterPowerW: 6000 });
    const areas = [found.gasSupplyAreaM2!, found.fireAreaM2!, found.heaterAreaM2!, found.expansionAreaM2!];
    expect(found.areaM2).toBe(Math.max(...areas));
    expect(found.notComputed.map(({ scenario }) => scenario)).toEqual(['runaway reaction']);
  });

  it('lists what is missing for what it did not compute', () => {
    const found = worst({ ...supply, flowCoefficientKv: undefined, ...expansion });
    expect(found.governing).toBe('thermal expansion');
    expect(found.gasSupplyAreaM2).toBeUndefined();
    expect(found.notComputed).toEqual([
      { scenario: 'gas supply', missing: ['flowCoefficientKv'] },
      {
        scenario: 'fire',
        missing: [
          'wettedAreaM2',
          'heatOfVaporisationJPerKg',
          'vapourMolarMassKgPerMol',
          'vapourIsentropicExponent',
          'relievingTemperatureK',
        ],
      },
      {
        scenario: 'heater runaway',
        missing: [
          'heaterPowerW',
          'heatOfVaporisationJPerKg',
          'vapourMolarMassKgPerMol',
          'vapourIsentropicExponent',
          'relievingTemperatureK',
        ],
      },
      { scenario: 'runaway reaction', missing: ['calorimetric data'] },
    ]);
  });

  it('boils with the full power of a heater that stays on: P / h_v, relieved as vapour', () => {
    const found = worst(heater);
    expect(found.governing).toBe('heater runaway');
    // 6000 W / 8e5 J/kg
    expect(found.heaterFlowKgPerS).toBeCloseTo(0.0075, 12);
    const direct = evaluate(gasArea, {
      massFlowKgPerS: 0.0075,
      temperatureK: 450,
      compressibilityFactor: 1,
      molarMassKgPerMol: 0.046,
      isentropicExponent: 1.13,
      inletPressurePaAbs: 61e5,
      dischargeCoefficient: 0.62,
    });
    expect(direct.ok && direct.value.areaM2).toBe(found.areaM2);
    expect(found.fireAreaM2).toBeUndefined();
  });

  it('asks of a heater as much as of a fire of the same heat', () => {
    const { fireHeatW, fireAreaM2 } = worst(fire);
    expect(worst({ ...heater, heaterPowerW: fireHeatW }).heaterAreaM2).toBeCloseTo(fireAreaM2!, 15);
  });

  it('relieves the vapour by its compressibility factor', () => {
    const ideal = worst(heater).areaM2!;
    expect(worst({ ...heater, vapourCompressibilityFactor: 0.81 }).areaM2! / ideal).toBeCloseTo(0.9, 9);
  });

  it('carries the refusal of a scenario to the outside', () => {
    for (const given of [fire, heater]) {
      expect(evaluate(worstInflow, { relievingPressurePaAbs: 1e5, ...given })).toMatchObject({
        ok: false,
        error: { code: 'CALC_OUT_OF_RANGE' },
      });
    }
    expect(evaluate(worstInflow, { relievingPressurePaAbs: 1e5, ...expansion })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE' },
    });
  });

  it('shows the scenarios and the worst of them', () => {
    const evidence = evaluateWithEvidence(worstInflow, {
      relievingPressurePaAbs: 61e5,
      ...supply,
      ...fire,
      ...expansion,
      heaterPowerW: 6000,
    });
    const symbols = evidence.ok ? evidence.value.steps.map(({ symbol }) => symbol) : [];
    expect(symbols).toEqual(expect.arrayContaining(['W_f', 'W_h', 'Q_e', 'A']));
    expect(symbols.at(-1)).toBe('A');
  });

  it('never computes a runaway reaction and says what that needs', () => {
    const found = worst({});
    expect(found.governing).toBe('none');
    expect(found.areaM2).toBeUndefined();
    expect(found.statement).toMatch(/calorimetric data/);
  });

  it('takes fire on the careful side where drainage is not given', () => {
    expect(worst({ ...fire }).fireAreaM2).toBe(worst({ ...fire, drainage: 'inadequate' }).fireAreaM2);
    expect(worst({ ...fire, drainage: 'adequate' }).fireAreaM2).toBeLessThan(worst(fire).fireAreaM2!);
  });

  it('expands by β Q / (ρ c_p)', () => {
    // API 521 §5.14 (hydraulic expansion).
    expect(worst(expansion).expansionFlowM3PerS).toBeCloseTo((1.1e-3 * 3000) / (790 * 2400), 15);
  });

  it('refuses a back pressure at the relieving pressure', () => {
    const outcome = evaluate(worstInflow, { relievingPressurePaAbs: 2e5, backPressurePaAbs: 2e5, ...supply });
    expect(!outcome.ok && outcome.error.field).toBe('backPressurePaAbs');
  });
});

describe('area for gas let in', () => {
  const discharged = (change: object) => {
    const outcome = evaluate(dischargedArea, { relievingPressurePaAbs: 61e5, ...supply, ...change });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('is the gas area of the inflow at the relieving pressure', () => {
    const { massFlowKgPerS, areaM2, diameterM } = discharged({});
    const direct = evaluate(gasArea, {
      massFlowKgPerS,
      temperatureK: 293.15,
      compressibilityFactor: 1,
      molarMassKgPerMol: 0.0280134,
      isentropicExponent: 1.4,
      inletPressurePaAbs: 61e5,
      dischargeCoefficient: 0.62,
    });
    expect(direct.ok && direct.value.areaM2).toBe(areaM2);
    expect((Math.PI / 4) * diameterM ** 2).toBeCloseTo(areaM2, 15);
  });

  it('is nothing where the supply cannot exceed the relieving pressure', () => {
    expect(discharged({ supplyPressurePaAbs: 61e5 }).areaM2).toBe(0);
    expect(discharged({ supplyPressurePaAbs: 10e5 }).massFlowKgPerS).toBe(0);
  });

  it('grows with supply pressure and flow coefficient', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 62e5, max: 300e5, noNaN: true }),
        fc.double({ min: 0.001, max: 10, noNaN: true }),
        (supplyPressurePaAbs, flowCoefficientKv) => {
          const base = discharged({ supplyPressurePaAbs, flowCoefficientKv }).areaM2;
          expect(
            discharged({ supplyPressurePaAbs: supplyPressurePaAbs * 1.01, flowCoefficientKv }).areaM2,
          ).toBeGreaterThan(base);
          expect(
            discharged({ supplyPressurePaAbs, flowCoefficientKv: flowCoefficientKv * 1.01 }).areaM2,
          ).toBeGreaterThan(base);
        },
      ),
    );
  });
});

describe('bursting disc below PS', () => {
  const disc = {
    maxAllowablePressurePaGauge: 60e5,
    operatingPressurePaGauge: 30e5,
    operatingRatio: 0.7,
    manufacturingRangePlus: 0.05,
    manufacturingRangeMinus: 0.05,
  };
  const windowOf = (change: object) => {
    const outcome = evaluate(discWindow, { ...disc, ...change });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('bursts at PS at the latest, whatever the ranges', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.63e5, max: 400e5, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (maxAllowablePressurePaGauge, manufacturingRangePlus, manufacturingRangeMinus) => {
          const found = windowOf({
            maxAllowablePressurePaGauge,
            manufacturingRangePlus,
            manufacturingRangeMinus,
          });
          expect(found.maxBurstPressurePaGauge / maxAllowablePressurePaGauge).toBeCloseTo(1, 12);
          expect(found.minBurstPressurePaGauge).toBeLessThanOrEqual(found.minStampedPressurePaGauge);
          expect(found.burstTolerance).toBeGreaterThanOrEqual(0.05);
          // 2 psi at least (Valve Selection Handbook pp. 216, 222, 248: up to 40 psi ± 2 psi, above ± 5 %).
          expect(found.burstTolerance * found.minStampedPressurePaGauge).toBeGreaterThanOrEqual(
            2 * 6894.757 * (1 - 1e-9),
          );
        },
      ),
    );
  });

  it('takes 5 % at 100 psi and 2 psi at 40 psi stamped', () => {
    const psi = 6894.757293168;
    const exact = { manufacturingRangePlus: 0, manufacturingRangeMinus: 0 };
    expect(
      windowOf({ ...exact, maxAllowablePressurePaGauge: 105 * psi }).specifiedPressurePaGauge / psi,
    ).toBeCloseTo(100, 9);
    const low = windowOf({ ...exact, maxAllowablePressurePaGauge: 32 * psi });
    expect(low.specifiedPressurePaGauge / psi).toBeCloseTo(30, 9);
    expect(low.burstTolerance).toBeCloseTo(2 / 30, 12);
  });

  it('keeps the operating ratio exactly at the highest operating pressure', () => {
    const { highestOperatingPressurePaGauge } = windowOf({});
    expect(windowOf({ operatingPressurePaGauge: highestOperatingPressurePaGauge }).operatingRatioKept).toBe(
      true,
    );
    expect(
      windowOf({ operatingPressurePaGauge: highestOperatingPressurePaGauge * 1.001 }).operatingRatioKept,
    ).toBe(false);
  });

  it('follows the worked example of a disc under 70 psi differential at ratio 0.7', () => {
    // Valve Selection Handbook pp. 216, 222, 248: least burst 100 psi, rated 105 psi (printed; 100/0.95).
    const psi = 6894.757293168;
    const found = windowOf({
      operatingPressurePaGauge: 70 * psi,
      maxAllowablePressurePaGauge: (100 / 0.95) * 1.05 * psi,
      manufacturingRangePlus: 0,
      manufacturingRangeMinus: 0,
    });
    expect(found.neededMinBurstPressurePaGauge / psi).toBeCloseTo(100, 9);
    expect(found.specifiedPressurePaGauge / psi).toBeCloseTo(105.26, 2);
    expect(found.operatingRatioKept).toBe(true);
  });

  it('asks for a vacuum support only where the vessel can be under vacuum', () => {
    expect(windowOf({ lowestPressurePaGauge: -1e5 }).vacuumSupportNeeded).toBe(true);
    expect(windowOf({}).vacuumSupportNeeded).toBe(false);
  });

  it('refuses a PS below 8 psi', () => {
    const outcome = evaluate(discWindow, { ...disc, maxAllowablePressurePaGauge: 5e4 });
    expect(!outcome.ok && outcome.error.code).toBe('CALC_OUT_OF_RANGE');
  });
});
