import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Calculation, quantity } from './calculation.js';
import { declarationFaults } from './declaration-faults.js';
import * as library from './index.js';
import { referenceCases } from './reference-cases.js';
import { calculations } from './registry.js';
import { criticalPressureRatio } from './relief/critical-pressure-ratio.js';
import { published } from './source-reference.js';
import { findSource, sources } from './sources.js';

const here = new URL('.', import.meta.url);
const domains = [...new Set(calculations.map(({ id }) => id.split('.')[0] ?? ''))];
const cases = domains.flatMap((domain) => referenceCases(domain));

/** Names under which the library exports each calculation. */
const exportedAs = new Map(Object.entries(library).map(([name, value]) => [value as unknown, name] as const));

/** The text of all tests but this one and the reference tests, in which a calculation is looked for by name. */
const ownTests = readdirSync(here, { recursive: true, encoding: 'utf8' })
  .filter(
    (file) =>
      file.endsWith('.test.ts') && !file.endsWith('.reference.test.ts') && file !== 'registry.test.ts',
  )
  .map((file) => readFileSync(new URL(file, here), 'utf8'))
  .join('\n');

const isNamedInTests = (name: string): boolean => new RegExp(`\\b${name}\\b`, 'u').test(ownTests);

describe.each(calculations.map((subject) => [subject.id, subject] as const))('%s', (_id, subject) => {
  it('is declared with id, title, formula, range, units, symbols and sources', () => {
    expect(declarationFaults(subject)).toEqual([]);
  });

  it('is exported by the library', () => {
    expect(exportedAs.has(subject)).toBe(true);
  });

  it('has a reference case or a test of its own', () => {
    const name = exportedAs.get(subject) ?? '';
    expect(
      cases.some(({ calculation }) => calculation === subject.id) ||
        isNamedInTests(subject.id.replace('.', String.raw`\.`)) ||
        (name !== '' && isNamedInTests(name)),
    ).toBe(true);
  });
});

describe('a declaration', () => {
  const whole = criticalPressureRatio;
  const length = { unit: 'm', symbol: 'l', description: 'Length' };

  it.each<[string, Partial<Calculation>, string]>([
    ['a domain', { id: 'criticalPressureRatio' }, 'id is not of the form domain.name'],
    ['a title', { title: ' ' }, 'no title'],
    ['a range', { range: '' }, 'no range'],
    ['a formula', { formula: '' }, 'no formula'],
    ['a brace', { formula: String.raw`\frac{a}{b` }, 'braces or brackets of the formula do not close'],
    ['a bracket', { formula: String.raw`\left(a` }, 'braces or brackets of the formula do not close'],
    ['outputs', { outputs: z.strictObject({}) }, 'no outputs'],
    ['a source', { source: [] }, 'no source'],
    ['a source on file', { source: [published('hearsay 1')] }, 'hearsay 1 has no key in sources.json'],
    [
      'a unit',
      { inputs: z.strictObject({ l: z.number().meta({ ...length, unit: undefined }) }) },
      'l has no unit',
    ],
    [
      'a unit that is a code',
      { inputs: z.strictObject({ l: quantity({ ...length, unit: 'furlong' }) }) },
      'l: furlong is no unit code',
    ],
    [
      'a symbol',
      { outputs: z.strictObject({ l: z.array(z.number()).meta({ ...length, symbol: undefined }) }) },
      'l has no symbol',
    ],
    [
      'a meaning',
      { outputs: z.strictObject({ l: z.number().meta({ unit: 'm', symbol: 'l' }) }) },
      'l has no meaning',
    ],
    ['a meaning of a text', { outputs: z.strictObject({ l: z.string() }) }, 'l has no meaning'],
    [
      'a symbol of its own for each field',
      { inputs: z.strictObject({ l: quantity(length), m: quantity({ ...length, description: 'Width' }) }) },
      'm has the symbol of l',
    ],
    [
      'a meaning of its own for each field',
      { inputs: z.strictObject({ l: quantity(length), m: quantity({ ...length, symbol: 'm' }) }) },
      'm has the description of l',
    ],
  ])('is refused without %s', (_words, change, fault) => {
    expect(declarationFaults(whole)).toEqual([]);
    expect(declarationFaults({ ...whole, ...change })).toEqual([fault]);
  });
});

describe('the registry', () => {
  it('has no id twice', () => {
    expect(new Set(calculations.map(({ id }) => id)).size).toBe(calculations.length);
  });

  it('holds every calculation that the library exports', () => {
    const registered = new Set<unknown>(calculations);
    const left = Object.entries(library)
      .filter(([, value]) => typeof value === 'object' && 'compute' in value && 'formula' in value)
      .filter(([, value]) => !registered.has(value))
      .map(([name]) => name);
    expect(left).toEqual([]);
  });

  it('holds every calculation that the reference cases name', () => {
    const file = new URL('../../../tests/reference/cases.json', import.meta.url);
    const named = (JSON.parse(readFileSync(file, 'utf8')) as { calculation: string }[]).map(
      ({ calculation }) => calculation,
    );
    const ids = new Set(calculations.map(({ id }) => id));
    expect([...new Set(named)].filter((id) => !ids.has(id))).toEqual([]);
  });
});

describe('the sources', () => {
  it('are all cited', () => {
    const cited = new Set(
      calculations.flatMap(({ source }) => source.map(({ citation }) => findSource(citation)?.key)),
    );
    expect([...sources.keys()].filter((key) => !cited.has(key))).toEqual([]);
  });

  it('are found by key and place, and not by a part of a word', () => {
    expect(findSource('perry-8 table 2-8')?.key).toBe('perry-8');
    expect(findSource('perry-8')?.key).toBe('perry-8');
    expect(findSource('perry-80 table 1')).toBeUndefined();
    expect(findSource('en-13445-5:2021 §10')?.key).toBe('en-13445-5:2021');
  });
});
