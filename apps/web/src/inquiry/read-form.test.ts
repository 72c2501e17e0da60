import { expect, it } from 'vitest';
import { formOf } from './form-values';
import { readForm, whyNotAsked } from './read-form';

it.each([
  [{}, /^Give the inquiry a title/],
  [{ title: 'A', sets: [{ batchVolume: '5' }] }, /^One field cannot be read/],
  [
    { title: 'A', sets: [{ batchVolume: '5' }], process: { media: [], density: 'heavy' } },
    /^2 fields cannot be read/,
  ],
])('says why it does not know what is still open: %j', (document, said) => {
  expect(whyNotAsked(readForm(formOf(document)))).toMatch(said);
});

it('says nothing once every field can be read', () => {
  expect(whyNotAsked(readForm(formOf({ title: 'A', sets: [{ batchVolume: '5 L' }] })))).toBeUndefined();
});

it('reads how many ports stay free as a number, and nothing where nobody says', () => {
  const asked = readForm(
    formOf({ title: 'A', sets: [{}], requirements: { freePorts: { count: 2, size: '10 mm' } } }),
  );
  expect(asked).toMatchObject({
    ok: true,
    document: { requirements: { freePorts: { count: 2, size: '10 mm' } } },
  });
  const empty = readForm({
    ...formOf({ title: 'A', sets: [{}] }),
    requirements: { freePorts: { count: '', size: '' } },
  });
  expect(empty.ok && empty.document.requirements?.freePorts).toBeUndefined();
});

it.each([
  ['1200', 1200],
  ['1 200', 1200],
  ['1,5', 1.5],
  ['1.200,5', 1200.5],
])('reads the plain number %s as %d', (typed, number) => {
  const read = readForm({
    ...formOf({ title: 'A', sets: [{}] }),
    process: { media: [], regulatorKv: typed },
  });
  expect(read.ok && read.document.process?.regulatorKv).toBe(number);
});

it('leaves a number as it was typed that may be read two ways', () => {
  const read = readForm({
    ...formOf({ title: 'A', sets: [{}] }),
    process: { media: [], regulatorKv: '1,200' },
  });
  expect(read.ok).toBe(false);
});
