import { expect, it } from 'vitest';
import { shortTitles } from './short-titles';

it('leaves out what all have, never the first part', () => {
  expect(
    shortTitles([
      'Corrie 2.5 L, 1.4404, bolted',
      'Corrie 2.5 L, alloy C-22, bolted',
      'Corrie 5 L, 1.4404, bolted',
    ]),
  ).toEqual(['Corrie 2.5 L, 1.4404', 'Corrie 2.5 L, alloy C-22', 'Corrie 5 L, 1.4404']);
});

it('keeps the first part of one that stands alone', () => {
  expect(shortTitles(['Corrie 2 L, 1.4404, bolted'])).toEqual(['Corrie 2 L']);
});
