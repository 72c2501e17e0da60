import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { highestSpeed } from './highest-speed.js';
import { impellerTorque } from './impeller-torque.js';

const ribbon = {
  impeller: 'double helical ribbon',
  impellerDiameterM: 0.19,
  vesselDiameterM: 0.2,
  densityKgPerM3: 1100,
  viscosityPaS: 60,
} as const;

const torqueOf = (
  inputs: Parameters<typeof evaluate<typeof impellerTorque.inputs, typeof impellerTorque.outputs>>[1],
) => {
  const outcome = evaluate(impellerTorque, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('torque of an impeller', () => {
  it('is about 20 N·m for a double ribbon of 0.19 m in 60 000 mPa·s at 60 1/min', () => {
    // Order of magnitude common in the trade; closed form K_L μ N D³ / (2π) with K_L 357 to 358 (Rieger).
    const { torqueNm, highTorqueNm } = torqueOf({ ...ribbon, speedPerS: 1 });
    expect(torqueNm).toBeCloseTo(
      (357.747 * 60 * 0.19 ** 3) / (2 * Math.PI) + (0.35 * 1100 * 0.19 ** 5) / (2 * Math.PI),
      1,
    );
    expect(torqueNm).toBeGreaterThan(18);
    expect(highTorqueNm).toBeLessThan(35);
  });

  it('agrees with example 9.1 of McCabe for a fully baffled turbine within its band', () => {
    // mccabe-smith-harriott-5 example 9.1: 0.61 m turbine at 1.5 1/s, 2.47 kW.
    const { powerW, highPowerW } = torqueOf({
      impeller: 'disc turbine',
      impellerDiameterM: 0.6096,
      vesselDiameterM: 1.83,
      baffleCount: 4,
      densityKgPerM3: 1497.7,
      viscosityPaS: 0.012,
      speedPerS: 1.5,
    });
    expect(powerW).toBeLessThanOrEqual(2470);
    expect(highPowerW).toBeGreaterThanOrEqual(2470);
  });

  it('takes a power law with index 1 as Newtonian', () => {
    const { viscosityPaS, ...geometry } = ribbon;
    const law = torqueOf({ ...geometry, speedPerS: 1, consistencyPaSn: viscosityPaS, flowIndex: 1 });
    expect(law.highTorqueNm).toBeCloseTo(torqueOf({ ...ribbon, speedPerS: 1 }).highTorqueNm, 10);
  });

  it('rises with viscosity and with speed, and keeps the high end above the centre', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1e3, noNaN: true }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        fc.double({ min: 1.01, max: 10, noNaN: true }),
        (viscosityPaS, speedPerS, factor) => {
          const base = torqueOf({ ...ribbon, viscosityPaS, speedPerS });
          expect(
            torqueOf({ ...ribbon, viscosityPaS: viscosityPaS * factor, speedPerS }).torqueNm,
          ).toBeGreaterThan(base.torqueNm);
          expect(
            torqueOf({ ...ribbon, viscosityPaS, speedPerS: speedPerS * factor }).torqueNm,
          ).toBeGreaterThan(base.torqueNm);
          expect(base.highTorqueNm).toBeGreaterThan(base.torqueNm);
        },
      ),
    );
  });

  it('says which input is missing where no viscosity is given', () => {
    const outcome = evaluate(impellerTorque, { ...ribbon, viscosityPaS: undefined, speedPerS: 1 });
    expect(!outcome.ok && outcome.error.field).toBe('viscosityPaS');
  });

  it('gives steps that end in the power', () => {
    const evidence = evaluateWithEvidence(impellerTorque, { ...ribbon, speedPerS: 1 });
    if (!evidence.ok) throw new Error(evidence.error.message);
    expect(evidence.value.steps.map((step) => step.symbol)).toEqual([
      'Re',
      'K_L',
      'Np',
      'M',
      'M_high',
      'P',
      'P_high',
    ]);
  });
});

describe('highest speed within the limits', () => {
  const speedOf = (limits: Record<string, number>, inputs: object = ribbon) => {
    const outcome = evaluate(highestSpeed, { ...ribbon, ...inputs, ...limits });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('gives back a speed whose torque is the limit, in laminar flow by the closed form', () => {
    const { speedPerS, limitedBy, highTorqueNm } = speedOf({ torqueLimitNm: 20 });
    expect(limitedBy).toBe('torque');
    expect(highTorqueNm).toBeCloseTo(20, 9);
    // K_L μ N D³ × 1.3 / (2π) = 20 without the small inertial part.
    expect(speedPerS).toBeCloseTo((20 * 2 * Math.PI) / (1.3 * 357.747 * 60 * 0.19 ** 3), 2);
  });

  it('names the limit that is reached first', () => {
    expect(speedOf({ torqueLimitNm: 20, tipSpeedLimitMPerS: 0.1 }).limitedBy).toBe('tip speed');
    expect(speedOf({ torqueLimitNm: 20, speedLimitPerS: 0.1 }).limitedBy).toBe('speed');
    expect(speedOf({ torqueLimitNm: 20, powerLimitW: 1 }).limitedBy).toBe('power');
  });

  it('inverts the torque over impellers, liquids and limits', () => {
    fc.assert(
      fc.property(
        fc.record({
          impeller: fc.constantFrom('disc turbine', 'pitched blade turbine', 'propeller', 'paddle'),
          consistencyPaSn: fc.double({ min: 1e-4, max: 100, noNaN: true }),
          torqueLimitNm: fc.double({ min: 0.01, max: 500, noNaN: true }),
          flowIndex: fc.double({ min: 0.2, max: 1.5, noNaN: true }),
        }),
        ({ impeller, consistencyPaSn, torqueLimitNm, flowIndex }) => {
          const shape = {
            impeller,
            impellerDiameterM: 0.1,
            vesselDiameterM: 0.2,
            baffleCount: 2,
            densityKgPerM3: 1000,
            consistencyPaSn,
            flowIndex,
          };
          const outcome = evaluate(highestSpeed, { ...shape, torqueLimitNm });
          if (!outcome.ok) {
            // The limit is passed at the lowest speed already.
            expect(outcome.error.field).toBe('torqueLimitNm');
            expect(torqueOf({ ...shape, speedPerS: 1e-6 }).highTorqueNm).toBeGreaterThan(torqueLimitNm);
            return;
          }
          const { speedPerS, limitedBy } = outcome.value;
          if (limitedBy === 'range of the method') return;
          const again = torqueOf({ ...shape, speedPerS });
          expect(Math.abs(again.highTorqueNm / torqueLimitNm - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('falls with viscosity', () => {
    const thin = speedOf({ torqueLimitNm: 20 }, { ...ribbon, viscosityPaS: 30 });
    expect(thin.speedPerS).toBeGreaterThan(speedOf({ torqueLimitNm: 20 }).speedPerS);
  });

  it('asks for a limit', () => {
    const outcome = evaluate(highestSpeed, ribbon);
    expect(!outcome.ok && outcome.error.code).toBe('CALC_INVALID_INPUT');
  });
});
