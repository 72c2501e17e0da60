import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatCount } from './format-count.js';

const plain = (text: string): string => text.replaceAll('\u2009\u2060', ' ');

describe('a count for people', () => {
  it.each([
    ['0', '0'],
    ['1', '1'],
    ['9999', '9999'],
    ['10000', '10 000'],
    ['62373', '62 373'],
    ['999999', '999 999'],
    ['1000000', 'about 1 × 10⁶'],
    ['62373888', 'about 6.2 × 10⁷'],
    ['1949999999999999999', 'about 1.9 × 10¹⁸'],
    ['1950000000000000000', 'about 2 × 10¹⁸'],
    ['9960000000', 'about 1 × 10¹⁰'],
    ['4311286633139568117138063360', 'about 4.3 × 10²⁷'],
  ])('writes %s as %s', (count, text) => {
    expect(plain(formatCount(count))).toBe(text);
  });

  it('keeps every digit below a million, and comes within five hundredths of what it rounds', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 40n }), (count) => {
        const text = plain(formatCount(String(count)));
        if (count < 1_000_000n) return text.replaceAll(' ', '') === String(count);
        const [, factor = '', power = ''] = /^about ([\d.]+) × 10([⁰¹²³⁴⁵⁶⁷⁸⁹]+)$/.exec(text) ?? [];
        const exponent = [...power].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)).join('');
        const share = Number(factor) / (Number(count) / 10 ** Number(exponent));
        return share > 0.95 && share < 1.05 + 1e-9 && Number(factor) >= 1 && Number(factor) < 10;
      }),
    );
  });
});
