import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate } from '../calculation.js';
import { flatEndPressure } from './flat-end-pressure.js';
import { flatEndThickness } from './flat-end-thickness.js';
import { glassVessel } from './glass-vessel.js';
import { openingPressure } from './opening-pressure.js';

const of = (subject: Calculation, inputs: Record<string, unknown>): Record<string, unknown> => {
  const outcome = evaluate(subject, inputs);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};
const near = (value: unknown, expected: number): void => {
  expect((value as number) / expected).toBeCloseTo(1, 5);
};

describe('a flat end of 300 mm and 20 mm with a joint of 0.7', () => {
  const end = { diameterM: 0.3, allowableStressPa: 100e6, jointEfficiency: 0.7, attachmentFactor: 0.4 };

  it.each([
    // 70 (20/300)²/0.4 and 70 (20/(0.4 × 300))² MPa.
    ['ASME VIII-1', 0.777778e6],
    ['EN 13445-3', 1.944444e6],
    ['AD 2000', 1.944444e6],
  ])('carries by %s', (code, expected) => {
    near(of(flatEndPressure, { ...end, code, thicknessM: 0.02 })['pressurePaGauge'], expected);
    near(of(flatEndThickness, { ...end, code, pressurePaGauge: expected })['thicknessM'], 0.02);
  });

  it('is at most as thick as wide', () => {
    const asme = { ...end, code: 'ASME VIII-1' };
    expect(evaluate(flatEndPressure as Calculation, { ...asme, thicknessM: 0.3 }).ok).toBe(true);
    expect(evaluate(flatEndPressure as Calculation, { ...asme, thicknessM: 0.301 })).toMatchObject({
      error: { code: 'CALC_OUT_OF_RANGE', field: 'thicknessM' },
    });
    // 70/0.4 = 175 MPa ask for 300 mm.
    expect(evaluate(flatEndThickness as Calculation, { ...asme, pressurePaGauge: 174.9e6 }).ok).toBe(true);
    expect(evaluate(flatEndThickness as Calculation, { ...asme, pressurePaGauge: 175.1e6 })).toMatchObject({
      error: { code: 'CALC_OUT_OF_RANGE', field: 'pressurePaGauge' },
    });
  });
});

describe('an opening of 50 mm with a branch of 5 mm in a shell of 300 mm and 12 mm', () => {
  const opening = {
    shape: 'sphere',
    innerRadiusM: 0.15,
    thicknessM: 0.012,
    branchOuterDiameterM: 0.05,
    branchThicknessM: 0.005,
    allowableStressPa: 112e6,
  };

  it.each([
    // l_s = √(312 × 12) = 61.188, l_b = √(45 × 5) = 15 mm; metal 734.26 + 135 mm²; under pressure 86.188 × 150²/312 or
    // 86.188 × 150, and 20 × 27 mm².
    ['sphere', (112e6 * (734.26 + 135)) / ((86.188 * 22500) / 312 + 540 + 434.63)],
    ['cylinder', (112e6 * (734.26 + 135)) / (86.188 * 150 + 540 + 434.63)],
  ])('of a %s is balanced by its metal', (shape, expected) => {
    const { pressurePaGauge, weakening } = of(openingPressure, { ...opening, shape });
    near(pressurePaGauge, expected);
    const unopened = ((shape === 'sphere' ? 2 : 1) * 112e6 * 0.012) / 0.156;
    near(weakening, expected / unopened);
  });

  it('counts a branch by the lower stress of branch and shell, and by its length', () => {
    const at = (change: object) =>
      of(openingPressure, { ...opening, ...change })['pressurePaGauge'] as number;
    near(
      at({ branchStressPa: 50e6 }),
      (112e6 * 734.26 + 50e6 * 135) / ((86.188 * 22500) / 312 + 540 + 434.63),
    );
    expect(at({ branchStressPa: 300e6 })).toBe(at({}));
    // 4 mm long: metal 5 × 16 mm², under pressure 20 × 16 mm².
    near(
      at({ branchLengthM: 0.004 }),
      (112e6 * (734.26 + 80)) / ((86.188 * 22500) / 312 + 320 + (734.26 + 80) / 2),
    );
  });

  it.each([
    ['sphere', 0.18, 'up to 0.18 m in this sphere'],
    ['cylinder', 0.3, 'up to 0.3 m in this cylinder'],
  ])('is in a %s at most %d m wide, and has a bore', (shape, widest, allowed) => {
    const ask = (change: object) =>
      evaluate(openingPressure as Calculation, { ...opening, shape, ...change });
    expect(ask({ branchOuterDiameterM: widest }).ok).toBe(true);
    expect(ask({ branchOuterDiameterM: widest * 1.001 })).toMatchObject({
      error: { field: 'branchOuterDiameterM', allowed },
    });
    expect(ask({ branchThicknessM: 0.0249 }).ok).toBe(true);
    expect(ask({ branchThicknessM: 0.025 })).toMatchObject({
      error: { field: 'branchThicknessM', allowed: 'less than half of the outer diameter (0.025 m)' },
    });
  });

  it.each(['sphere', 'cylinder'])('never raises a %s above its own pressure', (shape) => {
    const strong = { ...opening, shape, branchOuterDiameterM: 0.06, branchThicknessM: 0.029 };
    const { pressurePaGauge, weakening } = of(openingPressure, strong);
    near(pressurePaGauge, ((shape === 'sphere' ? 2 : 1) * 112e6 * 0.012) / 0.156);
    expect(weakening).toBe(1);
  });
});

describe('a glass vessel of 100 mm at 7 N/mm²', () => {
  const vessel = { innerDiameterM: 0.1, permissibleStressPa: 7e6 };

  it('is limited by the bore by Lamé: 70 (110² − 100²)/(110² + 100²) = 6.6516 bar, below 140 × 5/105', () => {
    const outputs = of(glassVessel, { ...vessel, thicknessM: 0.005 });
    near(outputs['wallPressureBarGauge'], 6.651584);
    near(outputs['pressureBarGauge'], 6.651584);
    expect(outputs['limitedBy']).toBe('wall');
  });

  it('is limited by the cap where the wall carries more', () => {
    const outputs = of(glassVessel, { ...vessel, thicknessM: 0.03 });
    near(outputs['wallPressureBarGauge'], (70 * 156) / 356);
    expect(outputs).toMatchObject({ pressureBarGauge: 12, limitedBy: 'cap' });
    // A wall and a cap alike: the wall is named.
    const thin = { ...vessel, thicknessM: 0.005 };
    const capBarGauge = of(glassVessel, thin)['wallPressureBarGauge'];
    expect(of(glassVessel, { ...thin, capBarGauge })['limitedBy']).toBe('wall');
    expect(of(glassVessel, { ...thin, capBarGauge: 6 })).toMatchObject({
      pressureBarGauge: 6,
      limitedBy: 'cap',
    });
  });
});
