import { describe, expect, it } from 'vitest';
import type { Rule } from './rule.js';
import { ruleBook } from './rule-book.js';
import { ruleCases } from './testing/rule-cases.js';
import { atLimit, numberOf, resultsOf, verdictOf } from './testing/rule-case.js';

/** Hard rules that refuse nothing: they keep a system from release until somebody found out what they ask. */
const asksOnly = new Set([
  'relief.runaway',
  'material.carrier-in-hydrogen',
  'material.medium-on-file',
  'strength.vapour-known',
  'hazardous-area.ignition-known',
]);

const comparesNumbers = (rule: Rule): boolean => rule.form === 'comparison' || rule.form === 'sum';

describe('every rule of the book', () => {
  it('has cases, and every case has its rule', () => {
    expect(Object.keys(ruleCases).sort()).toEqual(ruleBook.map((rule) => rule.id).sort());
  });

  it('has an id of its own, a title and a source', () => {
    expect(new Set(ruleBook.map((rule) => rule.id)).size).toBe(ruleBook.length);
    expect(ruleBook.filter((rule) => rule.title === '' || rule.source.length === 0)).toEqual([]);
  });
});

describe('what a rule says when it is met', () => {
  it('is a sentence', () => {
    const said = ruleBook.flatMap((rule) => ('met' in rule ? [`${rule.id}: ${rule.met}`] : []));
    expect(said.filter((text) => !/: [A-Z].+ .+\.$/.test(text))).toEqual([]);
  });
});

describe.each(ruleBook.map((rule) => ({ id: rule.id, rule })))('$id', ({ id, rule }) => {
  const { cases, edge } = ruleCases[id] ?? { cases: [] };

  it.each(cases)('$name: $is', (one) => {
    const results = resultsOf(rule, one);
    const text = results.map((result) => result.text).join('\n');
    expect(`${verdictOf(results)}: ${text}`).toMatch(new RegExp(`^${one.is}:`));
    if (one.says !== undefined) expect(text).toMatch(one.says);
  });

  it('has a case on either side', () => {
    const verdicts = new Set(
      cases.map((one) => (one.says === undefined ? one.is : `${one.is} ${one.says.source}`)),
    );
    expect(verdicts.size).toBeGreaterThan(1);
    if (rule.kind === 'hard' && !asksOnly.has(id))
      expect(cases.some((one) => one.is === 'not met' || one.is === 'outside standard range')).toBe(true);
  });

  if (comparesNumbers(rule)) {
    it('holds at its limit and fails just past it', () => {
      if (edge === undefined) throw new Error('a rule that compares numbers needs its edge');
      const { on, past } = atLimit(rule, edge);
      expect(['met', 'met with caution']).toContain(verdictOf(on));
      expect(numberOf(on[0]?.reserve)).toBeGreaterThanOrEqual(-1e-9 * Math.abs(numberOf(on[0]?.limit)));
      expect(numberOf(past[0]?.reserve)).toBeLessThan(0);
      const failed = rule.kind === 'hard' ? ['not met', 'outside standard range'] : ['met with caution'];
      expect(failed).toContain(verdictOf(past));
    });
  }
});
