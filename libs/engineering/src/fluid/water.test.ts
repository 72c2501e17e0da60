import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import { describe, expect, it } from 'vitest';
import { type Calculation, evaluate } from '../calculation.js';
import { heatOfVaporisation } from './heat-of-vaporisation.js';
import { liquidHeatCapacity } from './liquid-heat-capacity.js';
import { vapourPressure } from './vapour-pressure.js';

const steam = new IAPWS97_EoS();

const value = (subject: Calculation, field: string, temperatureK: number): number => {
  const outcome = evaluate(subject, { substance: 'water', temperatureK });
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value[field] as number;
};

/** State of the steam tables a little above or below the saturation pressure. */
const beside = (temperatureK: number, share: number) =>
  steam.solve({ p: share * value(vapourPressure, 'pressurePaAbs', temperatureK), t: temperatureK });

describe('water by IAPWS-IF97', () => {
  it('is the water of the printed check: 300 K and 3 MPa, 115.331273 kJ/kg', () => {
    // IAPWS R7-97(2012), table 5.
    expect(Number(steam.solve({ p: 3e6, t: 300 }).h)).toBeCloseTo(115.331273, 6);
  });

  const excess = (t: number): number => {
    const tables = (Number(beside(t, 0.997).h) - Number(beside(t, 1.003).h)) * 1000;
    return value(heatOfVaporisation, 'heatJPerKg', t) / tables - 1;
  };

  it.each([300, 350, 400, 450, 500])('takes as much heat to boil at %d K within 2 %', (t) => {
    expect(Math.abs(excess(t))).toBeLessThan(0.02);
  });

  it.each([
    [550, 0.03],
    [600, 0.085],
  ])('is said to take more than it does near the critical point: at %d K by at most %d', (t, most) => {
    expect(excess(t)).toBeGreaterThan(0);
    expect(excess(t)).toBeLessThan(most);
  });

  it.each([280, 300, 350, 400, 450, 500])('takes as much heat to warm at %d K within 1 %', (t) => {
    const expected = Number(beside(t, 1.003).cp) * 1000;
    expect(Math.abs(value(liquidHeatCapacity, 'heatCapacityJPerKgK', t) / expected - 1)).toBeLessThan(0.01);
  });
});
