import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findUnit,
  formatQuantity,
  fromSi,
  type Kind,
  parseQuantity,
  toSi,
  type Unit,
  units,
} from './index.js';

const given = (text: string, kind: Kind): number => {
  const outcome = parseQuantity(text, kind);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value.given;
};

const refusal = (text: string, kind: Kind): string => {
  const outcome = parseQuantity(text, kind);
  return outcome.ok ? `read as ${String(outcome.value.given)}` : outcome.error.message;
};

describe('a number before a unit that begins with a digit', () => {
  it.each([
    ['60 1/min', 60],
    ['5 1/min', 5],
    ['20 1/min', 20],
    ['600 1/min', 600],
    ['1000 1/min', 1000],
    ['1 000 1/min', 1000],
    ['1 000 000 1/min', 1_000_000],
    ['600 min-1', 600],
    ['600 min^-1', 600],
    ['600 min⁻¹', 600],
    ['600 rpm', 600],
    ['600 U/min', 600],
    ['600 1 / min', 600],
  ])('%s', (text, expected) => {
    const outcome = parseQuantity(text, 'speed');
    expect(outcome).toMatchObject({ ok: true, value: { given: expected, unit: { code: '/min' } } });
  });

  it('1/s', () => {
    expect(parseQuantity('12 1/s', 'speed')).toMatchObject({ ok: true, value: { si: 12 } });
  });
});

describe('thousands set apart', () => {
  it.each([
    ['60 000 mPas', 'viscosity', 60_000],
    ["60'000 mPas", 'viscosity', 60_000],
    ['60 000,5 mPas', 'viscosity', 60_000.5],
    ['1,200.5 psi', 'pressure', 1200.5],
    ['1,200,000 Pa', 'pressure', 1_200_000],
    ['1.200,5 mbar', 'pressure', 1200.5],
    ['−1 000 kJ/mol', 'molarEnergy', -1000],
  ] as const)('%s', (text, kind, expected) => {
    expect(given(text, kind)).toBe(expected);
  });

  it.each(['6 0 bar', '60 00 bar', '1000 000 bar', '1 0000 bar', '1,20,000 bar', "1 000'000 bar"])(
    '%s is refused',
    (text) => {
      expect(parseQuantity(text, 'pressure').ok).toBe(false);
    },
  );
});

describe('a comma', () => {
  it.each([
    ['1,5 L', 1.5],
    ['0,125 L', 0.125],
    ['1234,567 L', 1234.567],
    ['1,2000 L', 1.2],
    ['1.200 L', 1.2],
  ])('%s begins a fraction', (text, expected) => {
    expect(given(text, 'volume')).toBe(expected);
  });

  it.each([
    ['1,200 psi', '1.2 or 1200: write 1200 or 1.2'],
    ['-1,200 psi', '-1.2 or -1200: write -1200 or -1.2'],
    ['60,000 psi', '60 or 60000: write 60000 or 60'],
  ])('%s can be read in two ways and is refused', (text, readings) => {
    expect(refusal(text, 'pressure')).toContain(readings);
  });
});

const everyUnit = Object.entries(units).flatMap(([kind, list]) =>
  list.map((unit: Unit) => ({ kind: kind as Kind, unit })),
);

describe('every unit of the tables', () => {
  it('is read back as it was printed', () => {
    const magnitudes = fc.double({ min: 0.001, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...everyUnit), magnitudes, ({ kind, unit }, number) => {
        const shown = formatQuantity(toSi(kind, number, unit), kind, {
          unit: unit.code,
          significantDigits: 15,
        });
        const outcome = parseQuantity(shown, kind);
        if (!outcome.ok) throw new Error(outcome.error.message);
        expect(outcome.value.unit.code).toBe(unit.code);
        const back = fromSi(kind, outcome.value.si, unit);
        expect(Math.abs(back - number), shown).toBeLessThanOrEqual(Math.max(number, 1000) * 1e-11);
      }),
      { numRuns: 2000 },
    );
  });

  it('is read before each of its spellings', () => {
    const spellings = everyUnit.flatMap(({ kind, unit }) =>
      [unit.code, unit.label, ...unit.typed].map((spelling) => ({ kind, unit, spelling })),
    );
    const between = fc.constantFrom(' ', '\u00a0', '\u2009\u2060');
    fc.assert(
      fc.property(
        fc.constantFrom(...spellings),
        fc.integer({ min: 0, max: 99_999 }),
        between,
        ({ kind, spelling }, number, gap) => {
          const outcome = parseQuantity(`${String(number)}${gap}${spelling}`, kind);
          if (!outcome.ok) throw new Error(outcome.error.message);
          expect(outcome.value.given).toBe(number);
          expect(outcome.value.unit).toBe(spelling === '' ? units.ratio[0] : findUnit(kind, spelling));
        },
      ),
      { numRuns: 2000 },
    );
  });
});
