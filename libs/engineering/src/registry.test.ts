import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fieldTable } from './field-table.js';
import * as library from './index.js';
import { referenceCases } from './reference-cases.js';
import { calculations } from './registry.js';
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

/** UCUM codes of the units in use: products, quotients and powers of these. */
const unitAtoms = new Set('1 % deg m kg g mg s min h d K mol Pa bar N J W V A L T Ohm [ppm]'.split(' '));
const isUnit = (unit: string): boolean =>
  unit
    .replaceAll(/[()]/gu, '')
    .split(/[./]/u)
    .every((atom, index) =>
      atom === '' ? index === 0 : unitAtoms.has(atom.replace(/(?<=[A-Za-z])-?\d$/u, '')),
    );

const count = (text: string, part: string): number => text.split(part).length - 1;

describe.each(calculations.map((subject) => [subject.id, subject] as const))('%s', (_id, subject) => {
  it('has an id of its domain, a title and a range', () => {
    expect(subject.id).toMatch(/^[a-z][A-Za-z]*\.[a-z][A-Za-z0-9]*$/u);
    expect(subject.title.trim()).not.toBe('');
    expect(subject.range.trim()).not.toBe('');
  });

  it('has a formula whose braces and brackets close', () => {
    expect(subject.formula.trim()).not.toBe('');
    expect(count(subject.formula, '{')).toBe(count(subject.formula, '}'));
    expect(count(subject.formula, String.raw`\left`)).toBe(
      count(subject.formula, String.raw`\right`) + count(subject.formula, String.raw`\leftarrow`),
    );
  });

  it('labels every number with unit, symbol and meaning', () => {
    for (const line of [...fieldTable(subject.inputs), ...fieldTable(subject.outputs)]) {
      if (!line.isNumeric) continue;
      expect(line, `${subject.id} ${line.field}`).toMatchObject({
        unit: expect.any(String),
        symbol: expect.any(String),
        description: expect.any(String),
      });
      expect(isUnit(line.unit ?? ''), `${line.field}: ${line.unit ?? ''} is no unit code`).toBe(true);
    }
  });

  it('names its outputs', () => {
    expect(fieldTable(subject.outputs).length).toBeGreaterThan(0);
  });

  it('cites sources that resolve', () => {
    expect(subject.source.length).toBeGreaterThan(0);
    for (const { citation } of subject.source) {
      expect(findSource(citation), `${citation} has no key in sources.json`).toBeDefined();
    }
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
