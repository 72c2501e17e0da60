import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate, evaluateWithEvidence } from '../calculation.js';
import { dosedAmount } from '../gas/dosed-amount.js';
import { coolingWater } from './cooling-water.js';
import { electricalLoad } from './electrical-load.js';
import { floorLoad } from './floor-load.js';
import { gasConsumption } from './gas-consumption.js';
import { roomHeat } from './room-heat.js';
import { utilitiesCalculations } from './utilities-calculations.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('utilities.electricalLoad', () => {
  it('of 10 kW at a power factor of 0.8 on 400 V is 12.5 kVA and 18.04 A', () => {
    // Tables of motor currents: P / (√3 U cos φ).
    const load = valueOf(
      evaluate(electricalLoad, { consumers: [{ name: 'motor', powerW: 10_000, powerFactor: 0.8 }] }),
    );
    expect(load.apparentVA).toBeCloseTo(12_500, 6);
    expect(load.currentA).toBeCloseTo(18.04, 2);
    expect(load.powerFactor).toBeCloseTo(0.8, 12);
  });

  it('adds active and reactive power apart, and takes what runs at once', () => {
    const load = valueOf(
      evaluate(electricalLoad, {
        consumers: [
          { name: 'heater', powerW: 6000 },
          { name: 'motor', powerW: 4000, powerFactor: 0.8, simultaneity: 0.5 },
        ],
        simultaneityFactor: 0.9,
      }),
    );
    // 0.9 (6000 + 2000) = 7200 W; 0.9 × 2000 × 0.75 = 1350 var.
    expect(load.connectedW).toBe(10_000);
    expect(load.loadW).toBeCloseTo(7200, 9);
    expect(load.apparentVA).toBeCloseTo(Math.hypot(7200, 1350), 9);
  });

  it('of 2.3 kW on one line of 230 V is 10 A', () => {
    const load = valueOf(
      evaluate(electricalLoad, { consumers: [{ name: 'heater', powerW: 2300 }], voltageV: 230, phases: 1 }),
    );
    expect(load.currentA).toBeCloseTo(10, 12);
  });

  it('of nothing is nothing', () => {
    expect(valueOf(evaluate(electricalLoad, { consumers: [{ name: 'lamp', powerW: 0 }] }))).toMatchObject({
      loadW: 0,
      powerFactor: 1,
      currentA: 0,
    });
  });

  it('never exceeds what is connected over its power factor, and rises with each consumer', () => {
    const consumers = fc.array(
      fc.record({
        name: fc.constant('part'),
        powerW: fc.double({ min: 0, max: 1e6, noNaN: true }),
        powerFactor: fc.double({ min: 0.1, max: 1, noNaN: true }),
        simultaneity: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      { minLength: 1, maxLength: 10 },
    );
    fc.assert(
      fc.property(consumers, consumers, (some, more) => {
        const few = valueOf(evaluate(electricalLoad, { consumers: some }));
        const all = valueOf(evaluate(electricalLoad, { consumers: [...some, ...more] }));
        expect(few.loadW).toBeLessThanOrEqual(few.connectedW * (1 + 1e-12));
        expect(few.apparentVA).toBeGreaterThanOrEqual(few.loadW * (1 - 1e-12));
        expect(all.apparentVA).toBeGreaterThanOrEqual(few.apparentVA * (1 - 1e-12));
      }),
    );
  });
});

describe('utilities.coolingWater', () => {
  it('for 10 kW and 10 K is 0.2389 kg/s, 0.86 m³/h', () => {
    // Handbook rule: 860 kcal/h per kilowatt and 1 kcal/(kg·K), so 860 kg/h for 10 kW over 10 K.
    const water = valueOf(
      evaluate(coolingWater, {
        duties: [
          { name: 'coil', heatW: 8000 },
          { name: 'condenser', heatW: 2000 },
        ],
        inletTemperatureK: 288.15,
        outletTemperatureK: 298.15,
      }),
    );
    expect(water.flowKgPerS).toBeCloseTo(0.2389, 4);
    expect(water.flowM3PerH / 0.86).toBeCloseTo(1, 2);
  });

  it('falls with the share at once and takes another liquid', () => {
    const water = valueOf(
      evaluate(coolingWater, {
        duties: [{ name: 'coil', heatW: 1000 }],
        simultaneityFactor: 0.5,
        inletTemperatureK: 280,
        outletTemperatureK: 290,
        heatCapacityJPerKgK: 2000,
        densityKgPerM3: 900,
      }),
    );
    expect(water).toEqual({ heatW: 500, flowKgPerS: 0.025, flowM3PerH: 0.1 });
  });

  it.each([298.15, 290])('refuses an outlet of %d K that is not above the inlet', (outletTemperatureK) => {
    expect(
      evaluate(coolingWater, {
        duties: [{ name: 'coil', heatW: 1 }],
        inletTemperatureK: 298.15,
        outletTemperatureK,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'outletTemperatureK' } });
  });
});

describe('utilities.gasConsumption', () => {
  it('of a purge is that of the example in Crowl and Louvar: four purges from 20 mmHg, 1.33 lbmol', () => {
    // From memory, unverified: 1000 gal (3.785 m³), 75 °F, nitrogen filled from 20 mmHg to 1 atm, 21 % to 1 ppm oxygen.
    const purge = valueOf(
      evaluate(gasConsumption, {
        gas: 'nitrogen',
        gasSpaceM3: 3.7854,
        purgeCount: 4,
        purgePressurePaAbs: 101_325,
        purgeLowPressurePaAbs: 20 * 133.322,
        temperatureK: 297.04,
      }),
    );
    expect(purge.amountPerBatchMol / 453.592).toBeCloseTo(1.33, 2);
    expect(purge.residualShare * 0.21).toBeLessThan(1e-6);
    expect(((20 * 133.322) / 101_325) ** 3 * 0.21).toBeGreaterThan(1e-6);
  });

  it('adds reaction and sweep, and counts in normal volume: 22.414 L a mole', () => {
    const batch = valueOf(
      evaluate(gasConsumption, {
        gas: 'hydrogen',
        reactedMol: 10,
        gasSpaceM3: 0.002,
        sweepFlowNormalM3PerH: 0.1,
        sweepTimeS: 7200,
        batchesPerDay: 2,
      }),
    );
    expect(batch.amountPerBatchMol).toBeCloseTo(10 + 0.2 / 0.022_413_97, 5);
    expect(batch.normalVolumePerBatchM3).toBeCloseTo(10 * 0.022_413_97 + 0.2, 6);
    expect(batch.normalVolumePerDayM3).toBeCloseTo(2 * batch.normalVolumePerBatchM3, 12);
    expect(batch.massPerBatchKg / batch.amountPerBatchMol).toBeCloseTo(0.002_015_88, 6);
    expect(batch.residualShare).toBe(1);
  });

  it('takes each purge from the real-gas law', () => {
    const purge = { gas: 'hydrogen', gasSpaceM3: 0.05, purgePressurePaAbs: 200e5, temperatureK: 300 };
    const dosed = valueOf(
      evaluate(dosedAmount, {
        gas: 'hydrogen',
        reservoirVolumeM3: 0.05,
        startPressurePaAbs: 200e5,
        endPressurePaAbs: 101_325,
        temperatureK: 300,
      }),
    );
    const { amountPerBatchMol } = valueOf(evaluate(gasConsumption, { ...purge, purgeCount: 3 }));
    expect(amountPerBatchMol / (3 * dosed.amountMol)).toBeCloseTo(1, 12);
  });

  it.each([
    ['purgePressurePaAbs', { purgePressurePaAbs: 101_325 }],
    ['purgePressurePaAbs', {}],
    ['purgePressurePaAbs', { gas: 'carbon dioxide', purgePressurePaAbs: 80e5 }],
    ['gas', { gas: 'phlogiston', purgePressurePaAbs: 2e5 }],
  ])('names %s where it does not fit', (field, change) => {
    const outcome = evaluate(gasConsumption, { gas: 'nitrogen', gasSpaceM3: 0.01, purgeCount: 3, ...change });
    expect(outcome).toMatchObject({ ok: false, error: { field } });
  });

  it('grows with each purge while less of the former gas is left', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20 }),
        fc.double({ min: 1.2, max: 20, noNaN: true }),
        (purgeCount, ratio) => {
          const at = (count: number) =>
            valueOf(
              evaluate(gasConsumption, {
                gas: 'nitrogen',
                gasSpaceM3: 0.01,
                purgeCount: count,
                purgePressurePaAbs: ratio * 101_325,
              }),
            );
          expect(at(purgeCount + 1).amountPerBatchMol).toBeGreaterThan(at(purgeCount).amountPerBatchMol);
          expect(at(purgeCount + 1).residualShare).toBeLessThan(at(purgeCount).residualShare);
        },
      ),
    );
  });
});

describe('utilities.roomHeat', () => {
  it('of 1 kW needs about 600 m³/h of air 5 K warmer', () => {
    // Rule of ventilation: V [m³/h] = 3 Q [W] / ΔT [K], so 600 m³/h; the rule rounds 2.97 up.
    const heat = valueOf(evaluate(roomHeat, { emitters: [{ name: 'frame', powerW: 1000 }] }));
    expect(heat.heatToRoomW).toBe(1000);
    expect(heat.airFlowM3PerH / 600).toBeCloseTo(0.99, 2);
  });

  it('takes shares, and names the largest', () => {
    const heat = valueOf(
      evaluate(roomHeat, {
        emitters: [
          { name: 'vessel', powerW: 300 },
          { name: 'motor', powerW: 1500, shareToRoom: 0.2 },
          { name: 'circulator', powerW: 4000, shareToRoom: 0.25, simultaneity: 0.5 },
        ],
        airTemperatureRiseK: 10,
      }),
    );
    expect(heat.heatToRoomW).toBeCloseTo(300 + 300 + 500, 9);
    expect(heat.largestEmitter).toBe('circulator');
    expect(heat.airFlowM3PerH).toBeCloseTo((3600 * 1100) / (1.204 * 1006 * 10), 9);
  });
});

describe('utilities.floorLoad', () => {
  const parts = [
    { name: 'frame', massKg: 120 },
    { name: 'vessel', massKg: 60, count: 2 },
    { name: 'test water', massKg: 40 },
  ];

  it('weighs its parts', () => {
    const load = valueOf(evaluate(floorLoad, { parts }));
    expect(load).toEqual({ massKg: 280, forceN: 280 * 9.80665 });
  });

  it('stands on three feet of four, on two of two', () => {
    const foot = (footCount: number) => valueOf(evaluate(floorLoad, { parts, footCount })).footForceN!;
    expect(foot(4)).toBeCloseTo((280 * 9.80665) / 3, 9);
    expect(foot(3)).toBe(foot(4));
    expect(foot(2)).toBeCloseTo((280 * 9.80665) / 2, 9);
  });

  it('presses on its footprint and below its feet, more so where it shakes', () => {
    const load = valueOf(
      evaluate(floorLoad, {
        parts,
        footprintM2: 0.8,
        footCount: 4,
        footAreaM2: 0.002,
        dynamicFactor: 1.5,
        allowablePressurePa: 10_000,
      }),
    );
    const force = 1.5 * 280 * 9.80665;
    expect(load.floorPressurePa).toBeCloseTo(force / 0.8, 9);
    expect(load.footPressurePa).toBeCloseTo(force / 3 / 0.002, 6);
    expect(load.utilisation).toBeCloseTo(force / 0.8 / 10_000, 12);
  });

  it('asks for the number of feet', () => {
    expect(evaluate(floorLoad, { parts, footAreaM2: 0.01 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'footCount' },
    });
  });
});

describe('the steps of the utilities', () => {
  const given: Record<string, Record<string, unknown>> = {
    'utilities.coolingWater': {
      duties: [{ name: 'coil', heatW: 100 }],
      inletTemperatureK: 288,
      outletTemperatureK: 298,
    },
    'utilities.electricalLoad': { consumers: [{ name: 'motor', powerW: 100 }] },
    'utilities.floorLoad': { parts: [{ name: 'frame', massKg: 10 }], footprintM2: 1, footCount: 4 },
    'utilities.gasConsumption': { gas: 'nitrogen', gasSpaceM3: 0.01 },
    'utilities.roomHeat': { emitters: [{ name: 'vessel', powerW: 10 }] },
  };
  const symbols: Record<string, readonly string[]> = {
    'utilities.coolingWater': ['Q', 'W', 'V'],
    'utilities.electricalLoad': ['P', 'S', 'I'],
    'utilities.floorLoad': ['m', 'F', 'p', 'F_1'],
    'utilities.gasConsumption': ['n_p', 'n', 'V_n'],
    'utilities.roomHeat': ['Q', 'V'],
  };

  it.each(utilitiesCalculations.map((subject): [string, Calculation] => [subject.id, subject]))(
    'of %s end in its result',
    (id, subject) => {
      const evidence = valueOf(evaluateWithEvidence(subject, given[id]!));
      expect(evidence.steps.map(({ symbol }) => symbol)).toEqual(symbols[id]);
    },
  );
});
