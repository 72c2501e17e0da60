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
