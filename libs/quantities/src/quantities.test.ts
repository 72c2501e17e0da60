import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatNumber,
  formatQuantity,
  fromSi,
  type Kind,
  parseQuantity,
  quantityOf,
  toSi,
  units,
} from './index.js';

const si = (text: string, kind: Kind): number => {
  const outcome = parseQuantity(text, kind);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.si;
};

const code = (text: string, kind: Kind): string => {
  const outcome = parseQuantity(text, kind);
  return outcome.ok ? 'accepted' : outcome.error.code;
};

describe('factors, against NIST Special Publication 811 (2008), appendix B', () => {
  it.each([
    ['1 psi', 'pressure', 6894.757],
    ['1 atm', 'pressure', 101_325],
    ['1 mmHg', 'pressure', 133.3224],
    ['1 US gal', 'volume', 3.785412e-3],
    ['1 lb', 'mass', 0.45359237],
    ['1 in', 'length', 0.0254],
    ['1 cP', 'viscosity', 1e-3],
    ['1 lbf·in', 'torque', 0.1129848],
    ['1 hp', 'power', 745.6999],
    ['1 lbf', 'force', 4.448222],
    ['212 °F', 'temperature', 373.15],
  ] as const)('%s', (text, kind, expected) => {
    expect(si(text, kind) / expected).toBeCloseTo(1, 6);
  });
});

describe('what people type', () => {
  it('reads blanks, commas, true minus and letter case', () => {
    expect(si('60 bar', 'pressure')).toBe(6_000_000);
    expect(si('1,5 l', 'volume')).toBe(0.0015);
    expect(si('60 000 mPas', 'viscosity')).toBe(60);
    expect(si('−20 °C', 'temperature')).toBe(253.15);
    expect(si('870 PSI', 'pressure')).toBeCloseTo(5_998_438.8, 0);
    expect(si('1800 rpm', 'speed')).toBe(30);
    expect(si('20 %', 'ratio')).toBe(0.2);
  });

  it.each([
    ['viscosity', 60],
    ['temperature', 501.15],
    ['pressure', 437_000],
    ['torque', 12_345],
  ] as const)('reads a %s as it was shown', (kind, si) => {
    const shown = formatQuantity(si, kind, { significantDigits: 6 });
    const read = parseQuantity(shown, kind);
    expect(read.ok && read.value.si).toBeCloseTo(si, 6);
  });

  it('tells mPa·s from MPa', () => {
    expect(si('1 MPa', 'pressure')).toBe(1e6);
    expect(code('1 mPa', 'pressure')).toBe('QUANTITY_WRONG_UNIT');
  });

  it('never confuses gauge and absolute', () => {
    expect(si('0 bar(g)', 'pressure')).toBe(0);
    expect(si('1.01325 bar(a)', 'pressure')).toBeCloseTo(0, 6);
    expect(si('14.6959 psia', 'pressure')).toBeCloseTo(0, 0);
    const unsaid = parseQuantity('60 bar', 'pressure');
    expect(unsaid.ok && unsaid.value.reference).toBe('unsaid');
  });

  it('never converts a difference as a point on the scale', () => {
    expect(si('10 °C', 'temperatureDifference')).toBe(10);
    expect(si('18 °F', 'temperatureDifference')).toBeCloseTo(10, 12);
    expect(si('10 °C', 'temperature')).toBe(283.15);
  });
});

describe('refusals name what is allowed', () => {
  it.each([
    ['60 kg', 'pressure', 'QUANTITY_WRONG_UNIT'],
    ['60', 'pressure', 'QUANTITY_NO_UNIT'],
    ['hot', 'temperature', 'QUANTITY_NOT_A_NUMBER'],
    ['-300 °C', 'temperature', 'QUANTITY_IMPOSSIBLE'],
    ['-2 bar(g)', 'pressure', 'QUANTITY_IMPOSSIBLE'],
    ['-1 L', 'volume', 'QUANTITY_IMPOSSIBLE'],
    ['', 'volume', 'QUANTITY_NOT_A_NUMBER'],
  ] as const)('%s as %s', (text, kind, expected) => {
    const outcome = parseQuantity(text, kind);
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) {
      expect(outcome.error.code).toBe(expected);
      expect(outcome.error.message).toContain(outcome.error.allowed);
    }
  });

  it('refuses numbers that are not finite', () => {
    expect(quantityOf(Number.NaN, 'bar', 'pressure').ok).toBe(false);
    expect(quantityOf(Number.POSITIVE_INFINITY, 'bar', 'pressure').ok).toBe(false);
  });
});

describe('formatting', () => {
  it('shows three digits, thin spaces and a true minus', () => {
    expect(formatQuantity(6e6, 'pressure')).toBe('60\u2009\u2060bar(g)');
    expect(formatQuantity(253.15, 'temperature')).toBe('−20\u2009\u2060°C');
    expect(formatNumber(60_000)).toBe('60\u2009\u2060000');
  });

  it('rounds limits to the safe side', () => {
    expect(formatQuantity(6.156e6, 'pressure', { rounding: 'down' })).toBe('61.5\u2009\u2060bar(g)');
    expect(formatQuantity(387.65, 'temperature', { rounding: 'up' })).toBe('115\u2009\u2060°C');
  });
});

describe('every unit of every kind', () => {
  it('converts there and back within twelve digits', () => {
    const all = Object.entries(units).flatMap(([kind, list]) =>
      list.map((unit) => ({ kind: kind as Kind, unit })),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...all),
        fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
        ({ kind, unit }, value) => {
          const back = fromSi(kind, toSi(kind, value, unit), unit);
          const scale = kind === 'temperature' ? Math.max(Math.abs(value), 1000) : Math.abs(value);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(scale * 1e-12);
        },
      ),
    );
  });
});
