import { describe, expect, it } from 'vitest';
import { printText } from '../pdf/print-text.js';
import { dateText } from './date-text.js';
import { differenceText, figureText, stepValueText, unitText } from './figure-text.js';
import { indefiniteArticle } from './indefinite-article.js';
import { moneyText } from './money-text.js';

const plain = (text: string): string => text.replace(/[\u2009\u2060]+/g, ' ');

describe('texts for people', () => {
  it('dates', () => {
    expect(dateText('2026-11-24')).toBe('24 Nov 2026');
    expect(dateText('soon')).toBe('soon');
  });

  it('amounts keep every digit and read as they do on screen', () => {
    expect(plain(moneyText('46380.00', 'EUR'))).toBe('46 380.00 €');
    expect(plain(moneyText('7050.00', 'EUR'))).toBe('7 050.00 €');
    expect(plain(moneyText('-1391.40', 'EUR'))).toBe('−1 391.40 €');
    expect(plain(moneyText('950.00', 'USD'))).toBe('950.00 $');
  });

  it.each(['8 L', '8.5 L', '11 L', '18 L', '80 mL', '800 mL', '8\u2009\u2060000 L', '11\u2009\u2060000 L'])(
    'an %s',
    (text) => {
      expect(indefiniteArticle(text)).toBe('an');
    },
  );

  it.each(['1 L', '0.8 L', '5 L', '12 L', '110 L', '180 L', '1800 L', 'stirred'])('a %s', (text) => {
    expect(indefiniteArticle(text)).toBe('a');
  });

  it('units by their UCUM code', () => {
    expect(unitText('W/(m2.K)')).toBe('W/(m²·K)');
    expect(unitText('/min')).toBe('1/min');
    expect(unitText('1')).toBe('');
  });

  it('figures: gauge is said, small areas in mm², words stay words', () => {
    expect(plain(figureText(6e6, 'Pa'))).toBe('60 bar(g)');
    expect(plain(figureText(28.3e-6, 'm2', 'down'))).toBe('28.3 mm²');
    expect(figureText('by hand', 'Pa')).toBe('by hand');
    expect(plain(differenceText(-330, 'W'))).toBe('−330 W');
    expect(plain(differenceText(0, 'K'))).toBe('±0 K');
  });

  it('steps keep a digit more', () => {
    expect(plain(stepValueText(0.026532, 'm2'))).toBe('0.02653 m²');
    expect(plain(stepValueText(1.0466e8, 'Pa'))).toBe('1.047 · 10^8 Pa');
  });

  it('keep a number and its unit on one line and drop what no font shows', () => {
    expect(printText('Mantle, 1400 W, ϑ 20\u2009\u2060°C')).toBe('Mantle, 1400\u00a0W, θ 20\u2009°C');
    expect(printText('two\nlines\u0007')).toBe('two lines');
  });
});
