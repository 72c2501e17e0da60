import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Money, moneyText, percentOf, toCents } from './money.js';
import { totalsOf } from './totals.js';

const cents = (text: string): bigint => BigInt(text.replace('.', ''));

/** Percent with two decimals as whole hundredths of a percent, rounded half away from zero by whole numbers alone. */
const shareInCents = (amountCents: bigint, hundredths: bigint): bigint => {
  const product = amountCents * hundredths;
  const half = 5_000n;
  return (product + half) / 10_000n;
};

const amount = fc.bigInt(0n, 999_999_999_99n).map((c) => {
  const text = c.toString().padStart(3, '0');
  return `${text.slice(0, -2)}.${text.slice(-2)}`;
});
const percent = fc.integer({ min: 0, max: 9999 });
const percentText = (hundredths: number): string => new Money(hundredths).div(100).toFixed(2);

describe('rounding', () => {
  // Commercial rounding: DIN 1333:1992 section 4 (from memory, unverified): a five rounds away from zero.
  test.each([
    ['0.005', '0.01'],
    ['0.0149', '0.01'],
    ['1.005', '1.01'],
    ['2.675', '2.68'],
    ['-2.675', '-2.68'],
    ['999999999.995', '1000000000.00'],
  ])('%s becomes %s', (given, rounded) => {
    expect(moneyText(toCents(new Money(given)))).toBe(rounded);
  });

  test('a share is exact before it is rounded', () => {
    expect(moneyText(percentOf(new Money('33.33'), new Money('7.5')))).toBe('2.50');
  });
});

describe('totals', () => {
  test('reconcile to the last cent and agree with sums in whole cents', () => {
    fc.assert(
      fc.property(fc.array(amount, { maxLength: 60 }), percent, percent, (positions, discount, tax) => {
        const totals = totalsOf({
          positions: positions.map((p) => new Money(p)),
          discountPercent: new Money(percentText(discount)),
          taxPercent: new Money(percentText(tax)),
        });
        const list = positions.reduce((sum, p) => sum + cents(p), 0n);
        const taken = shareInCents(list, BigInt(discount));
        const added = shareInCents(list - taken, BigInt(tax));
        expect(cents(moneyText(totals.list))).toBe(list);
        expect(cents(moneyText(totals.discount))).toBe(taken);
        expect(cents(moneyText(totals.net))).toBe(list - taken);
        expect(cents(moneyText(totals.tax))).toBe(added);
        expect(cents(moneyText(totals.total))).toBe(list - taken + added);
      }),
    );
  });
});
