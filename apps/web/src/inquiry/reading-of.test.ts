import type { Kind } from '@flangewise/quantities';
import { expect, it } from 'vitest';
import { readingOf } from './reading-of';

/** Converted by NIST SP 811 (psi, °F); the others are decimal multiples or other names of the same unit. */
it.each<[string, Kind, string | undefined]>([
  ['60 rpm', 'speed', '60 1/min'],
  ['60 1/min', 'speed', undefined],
  ['20 1/s', 'speed', '1200 1/min'],
  ['1,5 L', 'volume', '1.5 L'],
  ['1.5 L', 'volume', undefined],
  ['250 mL', 'volume', '0.25 L'],
  ['150 °C', 'temperature', undefined],
  ['-20 °C', 'temperature', undefined],
  ['302 °F', 'temperature', '150 °C'],
  ['60 000 mPa·s', 'viscosity', undefined],
  ['1234.56 rpm', 'speed', '1234.56 1/min'],
  ['60 bar', 'pressure', '60 bar(g)'],
  ['60 bar(g)', 'pressure', undefined],
  ['870 psi', 'pressure', '59.98 bar(g)'],
  ['fast', 'speed', undefined],
])('says how "%s" is read as a %s', (typed, kind, shown) => {
  expect(readingOf(typed, kind)?.replaceAll('\u2009\u2060', ' ')).toBe(shown);
});
