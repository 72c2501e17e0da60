import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { chargedPressure } from './charged-pressure.js';
import { totalPressure } from './total-pressure.js';

const hydrogenOverMethanol = { substance: 'methanol', temperatureK: 423.15, statedPressurePaAbs: 60e5 };

describe('total pressure over a liquid under gas', () => {
  it('finds about 14 bar over methanol at 150 °C and gives both readings', () => {
    const outcome = evaluate(totalPressure, hydrogenOverMethanol);
    if (!outcome.ok) throw new Error(outcome.error.message);
    const { vapourPressurePaAbs, gasPressureIfTotalPaAbs, totalPressureIfPartialPaAbs } = outcome.value;
    expect(vapourPressurePaAbs / 1e5).toBeCloseTo(14, 0);
    expect(gasPressureIfTotalPaAbs).toBeCloseTo(60e5 - vapourPressurePaAbs, 3);
    expect(totalPressureIfPartialPaAbs).toBeCloseTo(60e5 + vapourPressurePaAbs, 3);
  });

  it.each([
    ['a pure liquid', { substance: 'methanol' }, 1],
    ['a solution, bounded by its water', { solute: 'sodium hydroxide', massFraction: 0.2 }, 1],
    ['a pressure that was measured', { vapourPressurePaAbs: 13e5 }, 0],
  ])('shows the correlation behind the vapour pressure of %s', (_words, liquid, correlations) => {
    const stated = { temperatureK: 423.15, statedPressurePaAbs: 60e5 };
    const evidence = evaluateWithEvidence(totalPressure, { ...stated, ...liquid });
    if (!evidence.ok) throw new Error(evidence.error.message);
    const symbols = evidence.value.steps.map(({ symbol }) => symbol);
    expect(symbols).toEqual([...Array<string>(correlations).fill('p_v'), 'p_v', 'p_total', 'p_gas']);
  });

  it('takes the higher reading where nobody said what the pressure means', () => {
    const highest = (statedMeans?: 'total' | 'partial pressure of the gas') => {
      const outcome = evaluate(totalPressure, { ...hydrogenOverMethanol, statedMeans });
      return outcome.ok ? outcome.value.highestTotalPressurePaAbs : undefined;
    };
    expect(highest('total')).toBe(60e5);
    expect(highest()).toBe(highest('partial pressure of the gas'));
    expect(highest()).toBeGreaterThan(73e5);
  });

  it('says where a stated total is below the vapour pressure', () => {
    const outcome = evaluate(totalPressure, {
      ...hydrogenOverMethanol,
      statedPressurePaAbs: 10e5,
      statedMeans: 'total',
    });
    expect(outcome).toMatchObject({ ok: true, value: { boilsIfTotal: true } });
    expect(outcome.ok && 'gasPressureIfTotalPaAbs' in outcome.value).toBe(false);
    expect(outcome.ok && outcome.value.highestTotalPressurePaAbs).toBeGreaterThan(13e5);
  });

  it('bounds 12 % caustic soda at 180 °C by water: about 10 bar', () => {
    const outcome = evaluate(totalPressure, {
      substance: 'sodium hydroxide',
      massFraction: 0.12,
      temperatureK: 453.15,
      statedPressurePaAbs: 1e5,
    });
    if (!outcome.ok) throw new Error(outcome.error.message);
    expect(outcome.value.vapourPressureIsUpperBound).toBe(true);
    expect(outcome.value.vapourPressurePaAbs / 1e5).toBeCloseTo(10, 0);
  });

  it('does not bound hydrochloric acid above its azeotrope', () => {
    expect(
      evaluate(totalPressure, {
        substance: 'hydrochloric acid',
        massFraction: 0.32,
        temperatureK: 330,
        statedPressurePaAbs: 1e5,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'massFraction' } });
  });
});

describe('pressure of a closed charge', () => {
  const charge = {
    substance: 'methanol',
    vesselVolumeM3: 0.002,
    coldVolumeM3: 0.001,
    hotVolumeM3: 0.001,
    coldTemperatureK: 293.15,
    hotTemperatureK: 293.15,
    chargedPressurePaAbs: 20e5,
  };

  it('stays where nothing changes', () => {
    const outcome = evaluate(chargedPressure, charge);
    expect(outcome.ok && outcome.value.hotPressurePaAbs).toBeCloseTo(20e5, 3);
  });

  it('grows by temperature, by the smaller headspace and by vapour', () => {
    const outcome = evaluate(chargedPressure, { ...charge, hotVolumeM3: 0.0012244, hotTemperatureK: 423.15 });
    if (!outcome.ok) throw new Error(outcome.error.message);
    // (20 bar − 0.130) × 423.15/293.15 × 1/0.7756 = 36.98 bar of gas, by hand
    expect(outcome.value.hotGasPressurePaAbs / 1e5).toBeCloseTo(36.98, 1);
    expect(outcome.value.hotVapourPressurePaAbs / 1e5).toBeCloseTo(13.9, 1);
  });

  it('refuses a vessel that would be full of liquid', () => {
    expect(evaluate(chargedPressure, { ...charge, hotVolumeM3: 0.002 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'hotVolumeM3' },
    });
  });
});
