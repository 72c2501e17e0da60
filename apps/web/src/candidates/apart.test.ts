import type { SystemInput } from '@flangewise/model';
import { expect, it } from 'vitest';
import { partsApart, type Titled } from './apart';

const titled = (title: string, choices: Record<string, string | null>, drive = 'Drive'): Titled => ({
  title,
  system: {
    inquiry: { title: 'x', process: {} },
    frame: { drive },
    sets: [{ count: 1, choices }],
  } satisfies SystemInput,
});
const name = (id: string): string => id;

it('names the parts in which systems differ, and no others', () => {
  const one = titled('A', { heater: 'Mantle', coil: 'Coil', stirrer: 'Turbine' }, 'Small');
  const two = titled('A', { heater: null, coil: null, stirrer: 'Turbine' }, 'Big');
  expect(partsApart([one, two], name)).toEqual(['Mantle; Coil; Small', 'Big']);
});

it('names kinds where these tell them apart, and parts in full only where nothing else does', () => {
  const small = titled('A', { heater: 'Mantle, 600 W' });
  const large = titled('A', { heater: 'Mantle, 900 W' });
  const other = titled('A', { heater: 'Circulator, 2 kW' });
  expect(partsApart([small, other], name)).toEqual(['Mantle', 'Circulator']);
  expect(partsApart([small, large], name)).toEqual(['Mantle, 600 W', 'Mantle, 900 W']);
});

it('leaves out what follows from a vessel that the title names', () => {
  const two = titled('2 L', { coil: 'Coil, bore 130' });
  const five = titled('5 L', { coil: 'Coil, bore 150' });
  expect(partsApart([two, five], name)).toEqual(['', '']);
});

it('has nothing to say of one system, or of equal ones', () => {
  const one = titled('A', { heater: 'Mantle' });
  expect(partsApart([one], name)).toEqual(['']);
  expect(partsApart([one, { ...one }], name)).toEqual(['', '']);
});
