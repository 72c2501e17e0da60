import { expect, it } from 'vitest';
import { sentenceCase } from './sentence-case.js';

it.each([
  ['ethanol with air is explosive.', 'Ethanol with air is explosive.'],
  ['n-hexane has a vapour pressure.', 'n-Hexane has a vapour pressure.'],
  ['tert-butanol freezes.', 'tert-Butanol freezes.'],
  ['1.5 L become 1.8 L.', '1.5 L become 1.8 L.'],
  ['PS 10 bar(g).', 'PS 10 bar(g).'],
  ['', ''],
])('begins %j as %j', (text, begun) => {
  expect(sentenceCase(text)).toBe(begun);
});
