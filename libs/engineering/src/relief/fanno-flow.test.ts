import { describe, expect, it } from 'vitest';
import { fannoFlow, inletMachOf } from './fanno-flow.js';

// Tables of Fanno flow of air, k = 1.4 (Shapiro; also NACA report 1135): M, f L*/D, p/p*.
const table = [
  [0.2, 14.5333, 5.45545],
  [0.3, 5.29925, 3.61906],
  [0.5, 1.06906, 2.13809],
  [0.8, 0.07229, 1.28928],
] as const;
const air = { isentropicExponent: 1.4 };

describe('adiabatic flow with friction against the printed tables', () => {
  it.each(table)('chokes a line that begins at Mach %d', (mach, totalResistance, overCritical) => {
    expect(inletMachOf({ ...air, totalResistance }, 1)).toBeCloseTo(mach, 4);
    const flow = fannoFlow({ ...air, totalResistance, pressureRatio: 0.9 / overCritical });
    expect(flow.choked).toBe(true);
    expect(flow.inletMach).toBeCloseTo(mach, 4);
    expect(flow.exitRatio * overCritical).toBeCloseTo(1, 4);
    expect(fannoFlow({ ...air, totalResistance, pressureRatio: flow.exitRatio }).choked).toBe(true);
    expect(fannoFlow({ ...air, totalResistance, pressureRatio: flow.exitRatio * 1.0001 }).choked).toBe(false);
  });

  it.each([
    [0, 2],
    [1, 2],
    [0, 1],
    [2, 3],
  ])('runs from row %d to row %d', (from, to) => {
    const [first, last] = [table[from], table[to]];
    if (first === undefined || last === undefined) throw new Error('no such row');
    const pressureRatio = last[2] / first[2];
    const totalResistance = first[1] - last[1];
    const flow = fannoFlow({ ...air, totalResistance, pressureRatio });
    expect(flow).toMatchObject({ choked: false, exitRatio: pressureRatio });
    expect(flow.inletMach).toBeCloseTo(first[0], 4);
    // The Mach number at the end gives that at the beginning back.
    expect(inletMachOf({ ...air, totalResistance }, last[0])).toBeCloseTo(first[0], 4);
  });
});

it('is isothermal at k = 1: M² = (1 − r²)/(K − 2 ln r)', () => {
  const flow = fannoFlow({ isentropicExponent: 1, totalResistance: 10, pressureRatio: 0.5 });
  expect(flow.inletMach).toBeCloseTo(Math.sqrt(0.75 / (10 + 2 * Math.log(2))), 10);
  expect(flow.choked).toBe(false);
});
