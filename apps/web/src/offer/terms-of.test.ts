import { expect, it } from 'vitest';
import { termsOf } from './terms-of';

const typed = { date: '2026-11-24', discountPercent: '', taxPercent: ' 7,5 ' };

it('leaves to the API what nobody typed, and reads a decimal comma', () => {
  expect(termsOf(typed, {})).toEqual({ date: '2026-11-24', discountPercent: undefined, taxPercent: '7.5' });
});

it('takes a discount that was emptied for none', () => {
  expect(termsOf(typed, { discountPercent: '3' })).toMatchObject({ discountPercent: '0' });
});
