import { describe, expect, it } from 'vitest';
import { ruleBook } from '../rule-book.js';
import { rulePages } from './rule-pages.js';

const pages = rulePages();

describe('the book of rules', () => {
  it('has one page a rule, in the order of the book', () => {
    expect(pages.map(({ id }) => id)).toEqual(ruleBook.map(({ id }) => id));
  });

  it('leaves no source out', () => {
    for (const [i, rule] of ruleBook.entries())
      for (const { citation, basis } of rule.source)
        expect(pages[i]?.sources).toContainEqual(expect.objectContaining({ citation, basis }));
    const named = pages.flatMap(({ sources }) => sources);
    expect(named.filter(({ short, full }) => short.trim() === '' || full.trim() === '')).toEqual([]);
  });
});

describe.each(pages.map((page) => ({ id: page.id, page })))('the page of $id', ({ page }) => {
  it('says what the rule does, what it reads, and shows it on either side', () => {
    expect(page.decides.every((text) => /^[A-Z].+\.$/u.test(text))).toBe(true);
    expect(page.decides).not.toHaveLength(0);
    expect(page.parts.length + page.conditions.length).toBeGreaterThan(0);
    expect(new Set(page.samples.map(({ says, texts }) => `${says} ${texts.join(' ')}`)).size).toBeGreaterThan(
      1,
    );
    for (const { says, texts } of page.samples) expect(texts.length > 0).toBe(says !== 'silent');
  });

  it('words every part and condition for people', () => {
    const attributes = page.parts.flatMap((part) =>
      part.attributes.map((text) => text.replace(/ \[.+\]$/u, '')),
    );
    const words = [...attributes, ...page.conditions];
    expect(words.filter((text) => text.trim() === '' || /[a-z][A-Z]|undefined/u.test(text))).toEqual([]);
  });

  it('gives every calculation its formulas, range and sources', () => {
    for (const calculation of page.calculations) {
      expect(calculation.formulas.length).toBeGreaterThan(0);
      expect(calculation.range).not.toBe('');
      expect(calculation.source.length).toBeGreaterThan(0);
    }
  });
});
