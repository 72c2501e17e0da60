import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, evaluateWithEvidence } from '../calculation.js';
import { stepFaults } from '../redone-by-hand.js';
import { batchPath } from './batch-path.js';
import { impellerTorque } from './impeller-torque.js';

const ribbon = {
  impeller: 'double helical ribbon',
  impellerDiameterM: 0.19,
  vesselDiameterM: 0.2,
} as const;

type Inputs = Parameters<typeof evaluate<typeof batchPath.inputs, typeof batchPath.outputs>>[1];

const path = (inputs: Pick<Inputs, 'points'> & Partial<Inputs>) => {
  const outcome = evaluate(batchPath, { ...ribbon, speedPerS: 1, ...inputs });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

const polymerisation: Inputs['points'] = [
  { name: 'monomer', densityKgPerM3: 900, viscosityPaS: 0.001, speedPerS: 4 },
  { name: 'half way', densityKgPerM3: 950, viscosityPaS: 10 },
  { name: 'polymer', densityKgPerM3: 1050, viscosityPaS: 60 },
  { name: 'melt', densityKgPerM3: 1050, consistencyPaSn: 200, flowIndex: 0.4, speedPerS: 0.5 },
];

describe('stirring.batchPath', () => {
  it('has the torque of the handbook’s ribbon at its thick end: K_L μ N² D³, with the band of measured values', () => {
    // Handbook of industrial mixing, example 9-6: laminar constant 357.4 at D/T 0.95; torque P/(2π N).
    const { points } = path({ points: [{ densityKgPerM3: 1050, viscosityPaS: 60 }] });
    const laminar = (357.4 * 60 * 0.19 ** 3) / (2 * Math.PI);
    expect(points[0]!.torqueNm / laminar).toBeCloseTo(1, 2);
  });

  it('finds the worst torque and the worst power, which need not be the same point', () => {
    const result = path({ points: polymerisation });
    const torques = result.points.map(({ highTorqueNm }) => highTorqueNm);
    const powers = result.points.map(({ highPowerW }) => highPowerW);
    expect(result.highTorqueNm).toBe(Math.max(...torques));
    expect(result.highestTorqueAt).toBe('polymer');
    expect(result.highPowerW).toBe(Math.max(...powers));
    expect(result.highestPowerAt).toBe(result.points[powers.indexOf(result.highPowerW)]!.name);
    const split = path({
      points: [
        { name: 'thick and slow', densityKgPerM3: 1000, viscosityPaS: 100, speedPerS: 0.1 },
        { name: 'thin and fast', densityKgPerM3: 1000, viscosityPaS: 1, speedPerS: 5 },
      ],
    });
    expect(split).toMatchObject({ highestTorqueAt: 'thick and slow', highestPowerAt: 'thin and fast' });
  });

  it('is at each point what the impeller has there', () => {
    const { points } = path({ points: polymerisation });
    polymerisation.forEach(({ name, speedPerS = 1, ...liquid }, i) => {
      const own = evaluate(impellerTorque, { ...ribbon, ...liquid, speedPerS });
      if (!own.ok) throw new Error(own.error.message);
      const { reynolds, torqueNm, highTorqueNm, powerW, highPowerW } = own.value;
      expect(points[i]).toEqual({ name, speedPerS, reynolds, torqueNm, highTorqueNm, powerW, highPowerW });
    });
  });

  it('numbers points without a name', () => {
    const { highestTorqueAt } = path({
      points: [
        { densityKgPerM3: 1000, viscosityPaS: 1 },
        { densityKgPerM3: 1000, viscosityPaS: 2 },
      ],
    });
    expect(highestTorqueAt).toBe('point 2');
  });

  it.each([
    ['points.1.speedPerS', { speedPerS: undefined, points: polymerisation }],
    ['points.1.viscosityPaS', { points: [polymerisation[0]!, { densityKgPerM3: 1000 }] }],
    ['points.0.densityKgPerM3', { points: [{ densityKgPerM3: -1, viscosityPaS: 1 }] }],
    ['impellerDiameterM', { impellerDiameterM: 0.1, points: polymerisation }],
  ])('names %s where it does not fit', (field, change) => {
    const outcome = evaluate(batchPath, { ...ribbon, speedPerS: 1, ...change });
    expect(outcome).toMatchObject({ ok: false, error: { field } });
  });

  it('never falls with a further point, nor with a thicker one', () => {
    const liquid = fc.record({
      densityKgPerM3: fc.double({ min: 500, max: 2000, noNaN: true }),
      viscosityPaS: fc.double({ min: 1e-3, max: 500, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(liquid, { minLength: 1, maxLength: 8 }),
        liquid,
        fc.double({ min: 1, max: 10, noNaN: true }),
        (points, further, factor) => {
          const base = path({ points }).highTorqueNm;
          expect(path({ points: [...points, further] }).highTorqueNm).toBeGreaterThanOrEqual(base);
          const thicker = points.map((p) => ({ ...p, viscosityPaS: p.viscosityPaS * factor }));
          expect(path({ points: thicker }).highTorqueNm).toBeGreaterThanOrEqual(base * (1 - 1e-12));
        },
      ),
    );
  });

  it('works the point of the highest torque through, and shows the highest of all', () => {
    const evidence = evaluateWithEvidence(batchPath, { ...ribbon, speedPerS: 1, points: polymerisation });
    if (!evidence.ok) throw new Error(evidence.error.message);
    const { steps } = evidence.value;
    expect(steps.map(({ symbol }) => symbol)).toEqual([
      ...['Re', 'K_L', 'Np', 'M', 'M_high', 'P', 'P_high'],
      ...['M_max', 'P_max'],
    ]);
    const value = (name: string) => steps.find(({ symbol }) => symbol === name)?.value;
    expect(value('M_max')).toBe(value('M_high'));
    // polymer: Re = 1050 × 1 × 0.19² / 60
    expect(value('Re')).toBeCloseTo(0.63175, 6);
    expect(stepFaults(steps)).toEqual([]);
  });
});
