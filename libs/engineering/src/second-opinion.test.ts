import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { evaluate } from './calculation.js';
import { gasArea } from './relief/gas-area.js';
import { steamArea } from './relief/steam-area.js';
import { viscosityCorrection } from './relief/viscosity-correction.js';
import { ribbonLaminarConstant } from './stirring/ribbon-laminar-constant.js';

/** Debian installs the library for its own interpreter, which need not be the first on the path. */
const interpreter = ['/usr/bin/python3', 'python3'].find(
  (python) => spawnSync(python, ['-c', 'import fluids']).status === 0,
);

/** What a list of calls to the library gives, in order. */
const answersOf = (calls: readonly string[]): readonly number[] => {
  const script = `import json, fluids\nfrom fluids import safety_valve, mixing\nprint(json.dumps([${calls.join(', ')}]))`;
  const { stdout, stderr, status } = spawnSync(interpreter ?? 'python3', ['-c', script], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as number[];
};

const valueOf = <T>(
  outcome:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: { readonly message: string } },
): T => {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

/** Evenly spaced, so that the same states are compared on every machine. */
const states = Array.from({ length: 25 }, (_none, i) => i / 24);

describe.skipIf(interpreter === undefined)('the library fluids (needs python3-fluids)', () => {
  it('gives the same areas for gas', () => {
    const cases = states.map((share) => ({
      massFlowKgPerS: 0.01 + 2 * share,
      temperatureK: 280 + 300 * share,
      compressibilityFactor: 0.7 + 0.4 * share,
      molarMassKgPerMol: 0.002 + 0.1 * share,
      isentropicExponent: 1.1 + 0.5 * share,
      inletPressurePaAbs: 2e5 + 8e6 * share,
      backPressurePaAbs: 1.9e5,
      dischargeCoefficient: 0.975,
    }));
    const expected = answersOf(
      cases.map(
        (c) =>
          `safety_valve.API520_A_g(m=${String(c.massFlowKgPerS)}, T=${String(c.temperatureK)}, Z=${String(c.compressibilityFactor)}, MW=${String(c.molarMassKgPerMol * 1000)}, k=${String(c.isentropicExponent)}, P1=${String(c.inletPressurePaAbs)}, P2=${String(c.backPressurePaAbs)}, Kd=0.975)`,
      ),
    );
    cases.forEach((c, i) => {
      // The library keeps the rounded constants of the standard: 0.1 %.
      expect(Math.abs(valueOf(evaluate(gasArea, c)).areaM2 / expected[i]! - 1)).toBeLessThan(1e-3);
    });
  });

  it('gives the same areas for steam by the 7th edition', () => {
    const cases = states.map((share) => ({
      massFlowKgPerS: 0.1 + 5 * share,
      temperatureK: 450 + 400 * share,
      inletPressurePaAbs: 5e5 + 15e6 * share,
      dischargeCoefficient: 0.975,
    }));
    const inside = cases.flatMap((c) => {
      const ours = evaluate(steamArea, { ...c, edition: '7th' });
      return ours.ok ? [{ c, areaM2: ours.value.areaM2 }] : [];
    });
    expect(inside.length).toBeGreaterThan(10);
    const expected = answersOf(
      inside.map(
        ({ c }) =>
          `safety_valve.API520_A_steam(m=${String(c.massFlowKgPerS)}, T=${String(c.temperatureK)}, P1=${String(c.inletPressurePaAbs)}, Kd=0.975)`,
      ),
    );
    // The library interpolates its table by splines, ours is bilinear: 1 %.
    inside.forEach(({ areaM2 }, i) => {
      expect(Math.abs(areaM2 / expected[i]! - 1)).toBeLessThan(1e-2);
    });
  });

  it('gives the same viscosity correction', () => {
    const reynolds = states.map((share) => 100 * 1000 ** share);
    const expected = answersOf(reynolds.map((re) => `safety_valve.API520_Kv(${String(re)})`));
    reynolds.forEach((re, i) => {
      const { viscosityCorrection: ours } = valueOf(
        evaluate(viscosityCorrection, { reynolds: re, edition: '7th' }),
      );
      expect(Math.abs(ours / expected[i]! - 1)).toBeLessThan(1e-9);
    });
  });

  it('gives the same laminar constant of helical ribbons', () => {
    const cases = states.map((share) => ({
      impellerDiameterM: 0.9,
      vesselDiameterM: 0.93 + 0.1 * share,
      impellerHeightM: 0.8 + 0.3 * share,
      pitchM: 0.5 + 0.5 * share,
      bladeWidthM: 0.08 + 0.06 * share,
      bladeCount: share < 0.5 ? 1 : 2,
    }));
    const expected = answersOf(
      cases.map(
        (c) =>
          `mixing.Kp_helical_ribbon_Rieger(D=${String(c.impellerDiameterM)}, h=${String(c.impellerHeightM)}, nb=${String(c.bladeCount)}, pitch=${String(c.pitchM)}, width=${String(c.bladeWidthM)}, T=${String(c.vesselDiameterM)})`,
      ),
    );
    let compared = 0;
    cases.forEach((c, i) => {
      const ours = evaluate(ribbonLaminarConstant, c);
      if (!ours.ok) return;
      compared += 1;
      expect(Math.abs(ours.value.laminarConstant / expected[i]! - 1)).toBeLessThan(1e-9);
    });
    expect(compared).toBeGreaterThan(10);
  });
});
