import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../calculation.js';
import { glassThermalShock } from './glass-thermal-shock.js';
import { glassTubePressure } from './glass-tube-pressure.js';
import { glassVessel } from './glass-vessel.js';

const vessel = (innerDiameterM: number, thicknessM: number) => {
  const outcome = evaluate(glassVessel, { innerDiameterM, thicknessM });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
};

describe('strength.glassVessel', () => {
  it.each([
    // Glass tubing sheet quoting EN 1595: outer diameter, wall, pressure of the tube formula; thin, so Lamé adds 0.1 %.
    [0.3, 0.007, 3.345],
    [0.06, 0.0022, 5.329],
  ])('agrees with the tube sheet for OD %f m, wall %f m', (outer, wall, printed) => {
    expect(vessel(outer - 2 * wall, wall).wallPressureBarGauge / printed).toBeCloseTo(1, 2);
  });

  it('falls with the bore and never passes 12 bar', () => {
    const bore = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(bore, bore, fc.double({ min: 0.001, max: 0.02, noNaN: true }), (first, second, wall) => {
        const narrow = vessel(Math.min(first, second), wall).pressureBarGauge;
        // Bores that differ by less than the last digits give the same pressure within rounding.
        expect(vessel(Math.max(first, second), wall).pressureBarGauge).toBeLessThanOrEqual(
          narrow * (1 + 1e-12),
        );
        expect(narrow).toBeLessThanOrEqual(12);
      }),
    );
  });

  it('is capped at a small bore and limited by its wall at a large one', () => {
    expect(vessel(0.05, 0.006)).toMatchObject({ limitedBy: 'cap', pressureBarGauge: 12 });
    expect(vessel(0.2, 0.007).limitedBy).toBe('wall');
  });

  it('never exceeds the tube formula', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.double({ min: 0.0005, max: 0.2, noNaN: true }),
        (bore, wall) => {
          const tube = evaluate(glassTubePressure, {
            outerDiameterM: bore + 2 * wall,
            thicknessM: wall,
            permissibleStressPa: 7e6,
          });
          expect(
            tube.ok && vessel(bore, wall).wallPressureBarGauge <= tube.value.pressureBarGauge * (1 + 1e-12),
          ).toBe(true);
        },
      ),
    );
  });

  it('takes no higher stress and no higher cap', () => {
    expect(
      evaluate(glassVessel, { innerDiameterM: 0.1, thicknessM: 0.006, permissibleStressPa: 8e6 }),
    ).toMatchObject({ ok: false, error: { code: 'CALC_OUT_OF_RANGE', field: 'permissibleStressPa' } });
    expect(evaluate(glassVessel, { innerDiameterM: 0.1, thicknessM: 0.006, capBarGauge: 13 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'capBarGauge' },
    });
  });
});

describe('strength.glassThermalShock', () => {
  const difference = (inputs: Record<string, number>) => {
    const outcome = evaluate(glassThermalShock, { thicknessM: 0.006, ...inputs });
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };

  it('lets 0.13 N/mm² a kelvin across the wall use up 7 N/mm²', () => {
    // α E / (2 (1 − ν)) with the properties read: 0.1299 N/mm² per kelvin at E = 63 GPa, 0.132 at 64 GPa.
    expect(difference({}).differenceK).toBeCloseTo(7 / 0.132, 1);
    expect(difference({}).suddenDifferenceK).toBeCloseTo(7 / 0.264, 1);
  });

  it('gives more room where the films take their share, up to 120 K', () => {
    const filmed = difference({ jacketCoefficientWPerM2K: 300, contentCoefficientWPerM2K: 500 });
    expect(filmed.wallShare).toBeCloseTo(0.005 / (1 / 300 + 0.005 + 1 / 500), 12);
    expect(filmed.differenceK).toBeCloseTo(7 / 0.132 / filmed.wallShare, 1);
    expect(difference({ jacketCoefficientWPerM2K: 50, contentCoefficientWPerM2K: 50 })).toMatchObject({
      differenceK: 120,
      limitedBy: 'cap',
    });
  });

  it('allows less to a thicker wall and to a wall under pressure', () => {
    const films = { jacketCoefficientWPerM2K: 400, contentCoefficientWPerM2K: 400 };
    expect(difference({ ...films, thicknessM: 0.01 }).differenceK).toBeLessThan(
      difference({ ...films, thicknessM: 0.006 }).differenceK,
    );
    expect(difference({ pressureStressPa: 3.5e6 }).differenceK).toBeCloseTo(
      difference({}).differenceK / 2,
      9,
    );
  });

  it('has no answer where the pressure uses up the stress', () => {
    expect(evaluate(glassThermalShock, { thicknessM: 0.006, pressureStressPa: 7e6 })).toMatchObject({
      ok: false,
      error: { code: 'CALC_OUT_OF_RANGE', field: 'pressureStressPa' },
    });
  });
});
