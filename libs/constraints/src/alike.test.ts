import { demoCatalogue } from '@flangewise/catalogue';
import { expect, it } from 'vitest';
import { alikeItems } from './alike.js';

const [first, second] = demoCatalogue.items.filter((item) => item.slot === 'vessel');
if (first === undefined || second === undefined) throw new Error('the range has two vessels');
const idsOf = (...items: Parameters<typeof alikeItems>[0][]) =>
  alikeItems(items.flatMap((list) => [...list])).map((group) => group.map(({ id }) => id));

it('groups items that differ in number, name and lead time alone', () => {
  const twin = { ...first, id: 'VS-9998', name: 'Another', leadTimeDays: first.leadTimeDays + 1 };
  expect(idsOf([first, second, twin])).toEqual([[first.id, twin.id], [second.id]]);
});

it.each([
  ['mass', { ...first, id: 'VS-9998', massKg: first.massKg + 0.1 }],
  ['life', { ...first, id: 'VS-9998', life: 'discontinued' as const }],
  ['a field inside', { ...first, id: 'VS-9998', geometry: { ...first.geometry, wallThicknessM: 0.5 } }],
  ['nothing said', { ...first, id: 'VS-9998', rating: undefined }],
])('keeps items apart that differ in %s', (_, other) => {
  expect(idsOf([first, other as never])).toEqual([[first.id], [other.id]]);
});
