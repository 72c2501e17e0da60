import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { aqueousSolutions } from './aqueous-solution-data.js';
import { laliberteWaterDensity, laliberteWaterViscosity } from './laliberte.js';
import { solutionDensity } from './solution-density.js';
import { solutionViscosity } from './solution-viscosity.js';

describe('aqueous solutions', () => {
  // IAPWS: 998.207 and 958.35 kg/m³ at 20 and 100 °C; 1.0016 and 0.2818 mPa·s (IAPWS 2008 viscosity).
  it('come down to water', () => {
    expect(laliberteWaterDensity(20)).toBeCloseTo(998.2, 1);
    expect(laliberteWaterDensity(100)).toBeCloseTo(958.4, 0);
    expect(laliberteWaterViscosity(20)).toBeCloseTo(1.0016, 2);
    expect(laliberteWaterViscosity(100)).toBeCloseTo(0.2818, 2);
    for (const { cas } of aqueousSolutions) {
      const density = evaluate(solutionDensity, { solute: cas, massFraction: 0, temperatureK: 298.15 });
      expect(density.ok && density.value.densityKgPerM3).toBeCloseTo(997.05, 1);
      const viscosity = evaluate(solutionViscosity, { solute: cas, massFraction: 0, temperatureK: 298.15 });
      expect(viscosity.ok && viscosity.value.viscosityPaS).toBeCloseTo(0.00089, 5);
    }
  });

  it('are plausible or a coded error anywhere', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...aqueousSolutions),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 200, max: 500, noNaN: true }),
        ({ cas }, massFraction, temperatureK) => {
          const density = evaluate(solutionDensity, { solute: cas, massFraction, temperatureK });
          if (density.ok) expect(density.value.densityKgPerM3).toBeGreaterThan(500);
          else expect(density.error.code).toBe('CALC_OUT_OF_RANGE');
          const viscosity = evaluate(solutionViscosity, { solute: cas, massFraction, temperatureK });
          if (viscosity.ok) expect(viscosity.value.viscosityPaS).toBeGreaterThan(0);
          else expect(viscosity.error.code).toBe('CALC_OUT_OF_RANGE');
        },
      ),
      { seed: 6, numRuns: 2000 },
    );
  });

  it('have no viscosity far from their data, where the form turns wild', () => {
    const refused = { ok: false, error: { code: 'CALC_OUT_OF_RANGE' } };
    expect(
      evaluate(solutionViscosity, { solute: 'nitric acid', massFraction: 0.65, temperatureK: 298.15 }),
    ).toMatchObject(refused);
    expect(
      evaluate(solutionViscosity, { solute: 'nitric acid', massFraction: 0.2, temperatureK: 323.15 }),
    ).toMatchObject(refused);
  });

  it('say where a value is extrapolated', () => {
    const evidence = evaluateWithEvidence(solutionViscosity, {
      solute: 'hydrochloric acid',
      massFraction: 0.37,
      temperatureK: 298.15,
    });
    expect(evidence.ok && evidence.value.steps[0]!.note).toContain(
      'extrapolated: fitted for 283.15 to 315.65 K, w up to 0.36',
    );
    expect(
      evaluate(solutionDensity, { solute: 'sodium chloride', massFraction: 0.4, temperatureK: 298.15 }),
    ).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'massFraction' },
    });
    expect(
      evaluate(solutionDensity, { solute: 'gold', massFraction: 0.4, temperatureK: 298.15 }),
    ).toMatchObject({
      ok: false,
      error: { code: 'CALC_UNKNOWN_SUBSTANCE', field: 'solute' },
    });
  });
});
