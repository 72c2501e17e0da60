import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { boltLoad } from './bolt-load.js';
import { boltProofStress } from './bolt-proof-stress.js';
import { boltStressArea } from './bolt-stress-area.js';
import { boltedCover } from './bolted-cover.js';
import { gasketFactors, gasketKinds } from './gasket-factors.js';
import { metricThreads } from './metric-thread.js';
import { ratedForce } from './rated-force.js';
import { tighteningTorque } from './tightening-torque.js';

const [psi, inch, lbf] = [6894.757293168, 0.0254, 4.4482216152605];

describe('closure.boltLoad', () => {
  it('agrees with a published flange sheet of wide gasket: b 0.3536 in, G 44.2928 in, 362 291 and 182 053 lbf', () => {
    // Published flange calculation: gasket outside 45 in, contact width 1 in, m 2.75, y 3700 psi, 200 psi.
    const load = evaluate(boltLoad, {
      code: 'ASME VIII-1',
      gasketOuterDiameterM: 45 * inch,
      gasketInnerDiameterM: 43 * inch,
      gasketFactor: 2.75,
      seatingStressPa: 3700 * psi,
      pressurePaGauge: 200 * psi,
    });
    if (!load.ok) throw new Error(load.error.message);
    expect(load.value.gasketReactionDiameterM / inch).toBeCloseTo(44.2928, 3);
    expect(Math.abs(load.value.operatingLoadN / lbf / 362291 - 1)).toBeLessThan(0.0005);
    expect(Math.abs(load.value.seatingLoadN / lbf / 182053 - 1)).toBeLessThan(0.0005);
  });

  it('takes the mean diameter of a narrow gasket: b = b0 = 0.25 in, G 18.625 in', () => {
    // Published girth flange: gasket 19.125 by 18.125 in.
    const load = evaluate(boltLoad, {
      code: 'ASME VIII-1',
      gasketOuterDiameterM: 19.125 * inch,
      gasketInnerDiameterM: 18.125 * inch,
      gasketFactor: 2.5,
      seatingStressPa: 2900 * psi,
      pressurePaGauge: 150 * psi,
    });
    expect(load.ok && load.value.gasketReactionDiameterM / inch).toBeCloseTo(18.625, 9);
    // H = 40 867 lbf on the sheet; its gasket part also holds a partition rib, which is not counted here.
    const endForce = (Math.PI / 4) * 18.625 ** 2 * 150;
    expect(Math.abs(endForce - 40867)).toBeLessThan(1);
    expect(load.ok && load.value.operatingLoadN / lbf).toBeCloseTo(
      endForce + 2 * 0.25 * Math.PI * 18.625 * 2.5 * 150,
      3,
    );
  });

  it('does not jump in width where the rule changes', () => {
    const width = (contact: number) => {
      const load = evaluate(boltLoad, {
        code: 'ASME VIII-1',
        gasketOuterDiameterM: 0.5,
        gasketInnerDiameterM: 0.5 - 2 * contact,
        gasketFactor: 1,
        seatingStressPa: 1e6,
        pressurePaGauge: 0,
      });
      return load.ok ? load.value.seatingLoadN / (Math.PI * load.value.gasketReactionDiameterM * 1e6) : NaN;
    };
    expect(width(0.0127)).toBeCloseTo(0.00635, 9);
    expect(width(0.0127 * 1.000001)).toBeCloseTo(0.00635, 7);
  });

  it('refuses a gasket without width', () => {
    expect(
      evaluate(boltLoad, {
        code: 'ASME VIII-1',
        gasketOuterDiameterM: 0.2,
        gasketInnerDiameterM: 0.2,
        gasketFactor: 1,
        seatingStressPa: 1e6,
        pressurePaGauge: 1e5,
      }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'gasketInnerDiameterM' } });
  });
});

describe('bolts', () => {
  it('have the stress area that their standard prints, within 0.6 %', () => {
    for (const { diameterM, pitchM, stressAreaM2 } of metricThreads) {
      const area = evaluate(boltStressArea, { diameterM, pitchM });
      expect(area.ok && Math.abs(area.value.areaM2 / stressAreaM2 - 1)).toBeLessThan(0.006);
    }
  });

  it('break at the load that ISO 898-1 prints: 8.8 from 800 MPa to M16 and 830 MPa above', () => {
    // Ultimate loads of ISO 898-1: M12 67.4 kN, M16 125 kN, M20 203 kN, M30 466 kN.
    const area = (size: string) => metricThreads.find((thread) => thread.size === size)!.stressAreaM2;
    for (const [size, strength, load] of [
      ['M12', 800e6, 67400],
      ['M16', 800e6, 125000],
      ['M20', 830e6, 203000],
      ['M30', 830e6, 466000],
    ] as const) {
      expect(Math.abs((area(size) * strength) / load - 1)).toBeLessThan(0.006);
    }
  });

  it('of class 8.8 have 580 MPa to M16 and 600 MPa above', () => {
    const proof = (diameterM: number) => {
      const outcome = evaluate(boltProofStress, { boltClass: '8.8', diameterM });
      return outcome.ok ? outcome.value.proofStressPa : NaN;
    };
    expect(proof(0.016)).toBe(580e6);
    expect(proof(0.018)).toBe(600e6);
    expect(evaluate(boltProofStress, { boltClass: '9.9', diameterM: 0.016 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_INVALID_INPUT', field: 'boltClass' },
    });
  });

  it('are tightened as published: M16 8.8 at 75 % and K 0.2 with 218.08 N·m, 68 kN', () => {
    // Bolt torque page: At 156.67 mm², proof 580 MPa.
    const outcome = evaluate(tighteningTorque, {
      diameterM: 0.016,
      stressAreaM2: 156.67e-6,
      proofStressPa: 580e6,
      preloadFraction: 0.75,
      nutFactor: 0.2,
    });
    expect(outcome.ok && outcome.value.preloadN).toBeCloseTo(68151, -1);
    expect(outcome.ok && outcome.value.torqueNm).toBeCloseTo(218.08, 1);
  });
});

describe('closure.gasketFactors', () => {
  it('has m and y of each kind that the table lists', () => {
    const kind = (gasket: string) => evaluate(gasketFactors, { gasket });
    expect(kind('spiral wound, stainless or nickel alloy')).toMatchObject({
      ok: true,
      value: { gasketFactor: 3 },
    });
    expect(kind('self-energising (O-ring, metallic, elastomer)')).toMatchObject({
      ok: true,
      value: { gasketFactor: 0, seatingStressPa: 0 },
    });
    expect(gasketKinds.length).toBe(32);
  });

  it('has nothing for PTFE, and says where to look', () => {
    const outcome = evaluate(gasketFactors, { gasket: 'PTFE sheet' });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'CALC_MISSING_PROPERTY', field: 'gasket' } });
  });
});

describe('closure.boltedCover', () => {
  const sheet = {
    gasketOuterDiameterM: 12.125 * inch,
    gasketInnerDiameterM: 10.75 * inch,
    gasketFactor: 1,
    seatingStressPa: 200 * psi,
    pressurePaGauge: 201 * psi,
    boltCount: 8,
    boltDiameterM: 0.016,
    boltPitchM: 0.002,
    boltAssemblyStressPa: 25000 * psi,
    boltOperatingStressPa: 25000 * psi,
  };

  it('agrees with a published flange sheet: required bolt area 1.011 in²', () => {
    // Published flange calculation, Wm1 25 272 lbf, Sa = Sb = 25 000 psi.
    const bolted = evaluate(boltedCover, sheet);
    if (!bolted.ok) throw new Error(bolted.error.message);
    expect(bolted.value.requiredBoltAreaM2 / inch ** 2).toBeCloseTo(1.011, 2);
    expect(Math.abs(bolted.value.operatingLoadN / lbf / 25272 - 1)).toBeLessThan(0.001);
    // The sheet's bolts of 1.664 in² have W = 33 436 lbf by the same formula.
    expect(((1.011 + 1.664) / 2) * 25000).toBeCloseTo(33436, -1);
    expect(bolted.value.flangeDesignLoadN).toBeCloseTo(
      ((bolted.value.requiredBoltAreaM2 + bolted.value.boltAreaM2) / 2) * 25000 * psi,
      3,
    );
  });

  it('leaves the loosest bolt enough and counts the tightest against its proof stress', () => {
    const bolted = evaluate(boltedCover, { ...sheet, preloadScatter: 0.3, boltProofStressPa: 580e6 });
    if (!bolted.ok) throw new Error(bolted.error.message);
    const { preloadN, operatingLoadN, highestBoltStressPa, boltAreaM2, proofUtilisation } = bolted.value;
    expect(8 * preloadN * 0.7).toBeCloseTo(operatingLoadN, 3);
    expect(highestBoltStressPa).toBeCloseTo((8 * preloadN * 1.3) / boltAreaM2, 3);
    expect(proofUtilisation).toBeCloseTo(highestBoltStressPa / 580e6, 12);
  });

  it('has stresses, use and torque that follow from its loads and areas', () => {
    const bolted = evaluate(boltedCover, sheet);
    if (!bolted.ok) throw new Error(bolted.error.message);
    const v = bolted.value;
    expect(v.operatingBoltStressPa * v.boltAreaM2).toBeCloseTo(v.operatingLoadN, 6);
    expect(v.seatingBoltStressPa * v.boltAreaM2).toBeCloseTo(v.seatingLoadN, 6);
    expect(v.utilisation * v.boltAreaM2).toBeCloseTo(v.requiredBoltAreaM2, 12);
    // Nut factor 0.16 and scatter 25 % are the usual ones: T = K F d.
    expect(v.torqueNm).toBeCloseTo(0.16 * v.preloadN * 0.016, 9);
    expect(8 * v.preloadN * 0.75).toBeCloseTo(v.operatingLoadN, 6);
    const dry = evaluate(boltedCover, { ...sheet, nutFactor: 0.3 });
    expect(dry.ok && dry.value.torqueNm / v.torqueNm).toBeCloseTo(0.3 / 0.16, 12);
  });

  it('takes a pitch of half of the diameter, and a gasket of some width', () => {
    expect(evaluate(boltedCover, { ...sheet, boltPitchM: 0.008 }).ok).toBe(true);
    expect(evaluate(boltStressArea, { diameterM: 0.016, pitchM: 0.008 }).ok).toBe(true);
    expect(evaluate(boltStressArea, { diameterM: 0.016, pitchM: 0.0081 })).toMatchObject({
      ok: false,
      error: { field: 'pitchM', allowed: 'at most half of the diameter (0.008 m)' },
    });
    expect(
      evaluate(boltedCover, { ...sheet, gasketInnerDiameterM: sheet.gasketOuterDiameterM }),
    ).toMatchObject({
      ok: false,
      error: { field: 'gasketInnerDiameterM' },
    });
  });

  it.each([
    ['boltPitchM', { boltPitchM: 0.009 }],
    ['gasketInnerDiameterM', { gasketInnerDiameterM: 0.4 }],
    ['boltCount', { boltCount: 2 }],
  ])('refuses %s outside its range', (field, change) => {
    expect(evaluate(boltedCover, { ...sheet, ...change })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field },
    });
  });

  it('shows its steps, and is finite or coded over every size', () => {
    const evidence = evaluateWithEvidence(boltedCover, sheet);
    expect(evidence.ok && evidence.value.steps.map(({ symbol }) => symbol)).toEqual([
      'b_0',
      'b',
      'G',
      'W_m2',
      'W_m1',
      'A_b',
      'A_m',
      'F',
      'T',
      'σ_max',
    ]);
    const extreme = fc.double({ min: 1e-9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(extreme, extreme, extreme), ([outer, pressurePaGauge, boltDiameterM]) => {
        const outcome = evaluate(boltedCover, {
          ...sheet,
          gasketOuterDiameterM: outer,
          gasketInnerDiameterM: outer * 0.9,
          pressurePaGauge,
          boltDiameterM,
        });
        if (!outcome.ok) expect(outcome.error.code).toBe('CALC_OUT_OF_RANGE');
      }),
    );
  });
});

describe('closure.ratedForce', () => {
  it('has a reserve of what is left of the rated force', () => {
    const rated = evaluate(ratedForce, { sealDiameterM: 0.2, pressurePaGauge: 1e6, ratedForceN: 50_000 });
    expect(rated.ok && rated.value.reserveN).toBeCloseTo(50_000 - Math.PI * 0.01 * 1e6, 6);
  });

  it('is used up at its highest pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 2, noNaN: true }),
        fc.double({ min: 1e3, max: 1e8, noNaN: true }),
        (sealDiameterM, ratedForceN) => {
          const given = { sealDiameterM, ratedForceN };
          const first = evaluate(ratedForce, { ...given, pressurePaGauge: 1e5 });
          if (!first.ok) throw new Error(first.error.message);
          const full = evaluate(ratedForce, {
            ...given,
            pressurePaGauge: first.value.highestPressurePaGauge,
          });
          expect(full.ok && full.value.utilisation).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});
