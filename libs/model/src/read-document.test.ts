import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { inquirySchema } from './inquiry.js';
import { readDocument } from './read-document.js';
import { systemSchema } from './system.js';

/** What is said of each field that cannot be used. */
const said = (schema: z.ZodType, document: unknown): Readonly<Record<string, string>> => {
  const read = readDocument(schema, document);
  if (read.ok) throw new Error('it can be used');
  return Object.fromEntries(
    read.error.map(({ path, given, message }) => [path, `${given} given; ${message}`]),
  );
};

describe('a field that there is not', () => {
  it('is named by itself, with those that there are and the one that may have been meant', () => {
    expect(said(inquirySchema, { titel: 'x', title: 'y', process: { presure: {}, foo: 1 } })).toEqual({
      titel: expect.stringMatching(
        /^"x" given; there is no such field; was title meant\? Allowed are title, client, .*commercial$/,
      ),
      'process.presure': expect.stringMatching(/^\{\} given.*was pressure meant\? Allowed are kind, media,/),
      'process.foo': expect.stringMatching(/^1 given; there is no such field; allowed are kind, media,/),
    });
  });

  it('is found in lists and choices', () => {
    const system = { inquiry: { title: 'x' }, sets: [{ choices: { vesel: 'VS-1001' } }] };
    expect(said(systemSchema, system)['sets[0].choices.vesel']).toContain('was vessel meant?');
  });
});

const calculation = z.strictObject({
  radiusM: z
    .number()
    .positive()
    .max(2)
    .meta({ unit: 'm', symbol: 'r_i', description: 'Inner radius of the shell' }),
  share: z.number().min(0).max(1).meta({ unit: '1', symbol: 'x', description: 'Share' }),
});

describe('a number', () => {
  it.each([
    ['that is missing', undefined, 'nothing'],
    ['that is text', '20', '"20"'],
    ['that is too small', -1, '-1'],
    ['that is too large', 3, '3'],
  ])('%s is asked for by symbol, meaning, range and unit', (_, radiusM, given) => {
    expect(said(calculation, { radiusM, share: 0.5 })).toEqual({
      radiusM: `${given} given; give r_i, Inner radius of the shell: number > 0, ≤ 2 [m]`,
    });
  });

  it('without a unit has none', () => {
    expect(said(calculation, { radiusM: 1, share: 2 })['share']).toBe(
      '2 given; give x, Share: number ≥ 0, ≤ 1',
    );
  });
});

it.each([
  [
    inquirySchema,
    { title: 'x', process: { pressure: { highest: 60 } } },
    /Process pressure.*bar.*number and unit/,
  ],
  [inquirySchema, { title: 'x', site: { zone: '3' } }, /one of 0, 1, 2, 20, 21, 22, none$/],
  [inquirySchema, [], /^\[\] given; give object of title, client/],
  [inquirySchema, { title: 'x', received: '24.11.2026' }, /calendar date like 2026-11-24/],
  [
    systemSchema,
    { inquiry: { title: 'x' }, offer: { discountPercent: '5 %' } },
    /percentage from 0 to 99\.99/,
  ],
])('says what is allowed, in words', (schema, document, words) => {
  expect(Object.values(said(schema, document))).toEqual([expect.stringMatching(words)]);
});
