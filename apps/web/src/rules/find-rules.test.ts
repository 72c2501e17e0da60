import { rulePages } from '@flangewise/constraints/rule-pages';
import { expect, it } from 'vitest';
import { findRules } from './find-rules';

const pages = rulePages();

it('finds every rule where nothing is asked, in the order of the book', () => {
  expect(findRules(pages, ' ').map(({ number }) => number)).toEqual(pages.map((_, i) => i + 1));
});

it.each([
  ['coupling torque', 'stirring.coupling-torque'],
  ['PORT reducer', 'accessories.ports'],
  ['stirring.coupling-torque', 'stirring.coupling-torque'],
])('finds by %s', (text, id) => {
  const found = findRules(pages, text);
  expect(found.map(({ page }) => page.id)).toContain(id);
  expect(found.length).toBeLessThan(pages.length);
});

it('finds nothing by words that no rule has', () => {
  expect(findRules(pages, 'coupling zymurgy')).toEqual([]);
});
