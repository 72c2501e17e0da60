import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { hotVolume } from './hot-volume.js';
import { liquidFullFraction } from './liquid-full-fraction.js';

const methanol = {
  substance: 'methanol',
  coldVolumeM3: 0.0015,
  coldTemperatureK: 293.15,
  hotTemperatureK: 423.15,
};

describe('hot volume', () => {
  it('brings 1.5 L of methanol to about 1.85 L at 150 °C', () => {
    const outcome = evaluate(hotVolume, methanol);
    expect(outcome.ok && outcome.value.hotVolumeM3).toBeCloseTo(0.00184, 4);
  });

  it('brings 250 L of toluene to about 310 L at 180 °C', () => {
    const outcome = evaluate(hotVolume, {
      substance: 'toluene',
      coldVolumeM3: 0.25,
      coldTemperatureK: 293.15,
      hotTemperatureK: 453.15,
    });
    expect(outcome.ok && outcome.value.hotVolumeM3).toBeCloseTo(0.31, 2);
  });

  it('holds the fill against 85 %, 60 % where it foams, and a limit of the engineer', () => {
    const fill = (more: object) => evaluate(hotVolume, { ...methanol, vesselVolumeM3: 0.0022, ...more });
    expect(fill({})).toMatchObject({
      ok: true,
      value: { fillLimit: 0.85, withinFillLimit: true, liquidFull: false },
    });
    expect(fill({ foaming: true })).toMatchObject({
      ok: true,
      value: { fillLimit: 0.6, withinFillLimit: false },
    });
    expect(fill({ maxFillFraction: 0.8 })).toMatchObject({
      ok: true,
      value: { fillLimit: 0.8, withinFillLimit: false },
    });
  });

  it('is liquid-full just where the fill fraction that becomes full says so', () => {
    const full = evaluate(liquidFullFraction, {
      substance: 'methanol',
      fillTemperatureK: 293.15,
      workTemperatureK: 423.15,
    });
    if (!full.ok) throw new Error(full.error.message);
    const at = (fraction: number) =>
      evaluate(hotVolume, { ...methanol, vesselVolumeM3: methanol.coldVolumeM3 / fraction });
    expect(at(full.value.fillFraction * 1.0001)).toMatchObject({ ok: true, value: { liquidFull: true } });
    expect(at(full.value.fillFraction * 0.9999)).toMatchObject({ ok: true, value: { liquidFull: false } });
  });

  it('takes measured densities, and only both', () => {
    const measured = {
      coldVolumeM3: 1,
      coldTemperatureK: 293,
      hotTemperatureK: 400,
      coldDensityKgPerM3: 1000,
    };
    expect(evaluate(hotVolume, { ...measured, hotDensityKgPerM3: 800 })).toMatchObject({
      ok: true,
      value: { hotVolumeM3: 1.25, estimated: false },
    });
    expect(evaluate(hotVolume, measured)).toMatchObject({ ok: false, error: { code: 'CALC_INVALID_INPUT' } });
  });

  it('estimates a solution past its data and says so', () => {
    const soda = {
      solute: 'caustic soda',
      massFraction: 0.12,
      coldVolumeM3: 0.001,
      coldTemperatureK: 293.15,
    };
    expect(evaluate(hotVolume, { ...soda, hotTemperatureK: 453.15 })).toMatchObject({
      ok: true,
      value: { estimated: true },
    });
    const evidence = evaluateWithEvidence(hotVolume, { ...soda, hotTemperatureK: 453.15 });
    expect(evidence.ok && evidence.value.steps.at(-1)!.note).toContain('it follows water');
  });

  it.each([
    [{ ...methanol, hotTemperatureK: 280 }, 'CALC_OUT_OF_RANGE', 'hotTemperatureK'],
    [{ ...methanol, hotTemperatureK: 600 }, 'CALC_OUT_OF_RANGE', 'hotTemperatureK'],
    [{ ...methanol, substance: 'hydrochloric acid' }, 'CALC_INVALID_INPUT', 'massFraction'],
    [{ ...methanol, substance: undefined }, 'CALC_INVALID_INPUT', 'substance'],
  ] as const)('refuses %j', (inputs, code, field) => {
    expect(evaluate(hotVolume, inputs)).toMatchObject({ ok: false, error: { code, field } });
  });
});
