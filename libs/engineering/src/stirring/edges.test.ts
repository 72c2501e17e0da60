import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { blendTime } from './blend-time.js';
import { gassedPowerRatio } from './gassed-power-ratio.js';
import { laminarPower } from './laminar-power.js';
import { ribbonLaminarConstant } from './ribbon-laminar-constant.js';

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('gassed power', () => {
  const gassed = {
    speedPerS: 5,
    impellerDiameterM: 0.1,
    bladeWidthM: 0.02,
    liquidVolumeM3: 0.02,
    gasFlowM3PerS: 1e-4,
  };
  const noteOf = (gasFlowM3PerS: number) =>
    valueOf(evaluateWithEvidence(gassedPowerRatio, { ...gassed, gasFlowM3PerS })).steps[0]?.note;

  it('is the ungassed one without gas, and falls with gas', () => {
    expect(valueOf(evaluate(gassedPowerRatio, { ...gassed, gasFlowM3PerS: 0 })).powerRatio).toBe(1);
    expect(valueOf(evaluate(gassedPowerRatio, gassed)).powerRatio).toBeLessThan(1);
  });

  it('says where it is capped, and only there', () => {
    expect(noteOf(1e-9)).toContain('capped at 1');
    expect(noteOf(1e-3)).toBeUndefined();
    expect(noteOf(0)).toBeUndefined();
  });
});

describe('laminar power', () => {
  // Re = 1000 × 1 × 0.1²/μ = 10/μ.
  const laminar = { impellerDiameterM: 0.1, speedPerS: 1, densityKgPerM3: 1000, laminarConstant: 300 };
  const noteAt = (reynolds: number) =>
    valueOf(evaluateWithEvidence(laminarPower, { ...laminar, viscosityPaS: 10 / reynolds })).steps[0]?.note;

  it('warns of turbines above Re 10', () => {
    expect(noteAt(5)).toBeUndefined();
    expect(noteAt(20)).toContain('close-clearance');
  });

  it('ends above Re 100', () => {
    expect(evaluate(laminarPower, { ...laminar, viscosityPaS: 10 / 99 }).ok).toBe(true);
    expect(evaluate(laminarPower, { ...laminar, viscosityPaS: 10 / 101 })).toMatchObject({
      ok: false,
      error: { field: 'viscosityPaS' },
    });
  });
});

describe('blend time of a ribbon', () => {
  const ribbon = {
    impellerDiameterM: 0.19,
    vesselDiameterM: 0.2,
    speedPerS: 1,
    densityKgPerM3: 1000,
    powerNumber: 30,
    laminarConstant: 357,
  };

  it('is 896 000 K_L^(−1.69) / N, whatever the viscosity, up to Re 100', () => {
    const at = (viscosityPaS: number) => evaluate(blendTime, { ...ribbon, viscosityPaS });
    // Re = 36.1/μ
    expect(valueOf(at(10)).blendTimeS / (896_000 / 357 ** 1.69)).toBeCloseTo(1, 9);
    expect(valueOf(at(0.37)).blendTimeS).toBe(valueOf(at(10)).blendTimeS);
    expect(at(0.35)).toMatchObject({ ok: false, error: { field: 'speedPerS' } });
  });
});

it.each([1, 1.1])('a ribbon of %d m does not fit into a vessel of 1 m', (impellerDiameterM) => {
  expect(
    evaluate(ribbonLaminarConstant, {
      impellerDiameterM,
      vesselDiameterM: 1,
      impellerHeightM: 1,
      pitchM: 1,
      bladeWidthM: 0.1,
      bladeCount: 1,
    }),
  ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'impellerDiameterM' } });
});
