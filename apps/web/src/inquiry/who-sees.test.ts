import { expect, it } from 'vitest';
import { whoSees } from './who-sees';

const clients = [
  { name: 'Kelmoor Polymers', hasPeople: true },
  { name: 'Orvane Works', hasPeople: false },
];

it.each([
  ['Kelmoor Polymers', 'People of Kelmoor Polymers will see it'],
  [' kelmoor  polymers ', 'People of Kelmoor Polymers will see it'],
  ['Orvane Works', 'Nobody of Orvane Works signs in; nobody outside sees it yet'],
  ['Kelmoor Polymer', 'New client; nobody outside sees it yet'],
  ['  ', 'No client named; nobody outside sees it'],
])('says who sees an inquiry for "%s"', (typed, said) => {
  expect(whoSees(typed, clients)).toBe(said);
});
