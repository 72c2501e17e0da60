import type { RulePage } from '@flangewise/model';
import { expect, it } from 'vitest';
import { ruleIndexesOf } from './rule-index.js';

const page = (id: string, rest: Partial<RulePage>): RulePage => ({
  id,
  title: id,
  group: 'strength',
  kind: 'hard',
  effect: '',
  decides: [],
  parts: [],
  conditions: [],
  calculations: [],
  samples: [],
  media: [],
  sources: [],
  ...rest,
});

const source = (short: string, basis: 'published' | 'common practice') => ({
  citation: short,
  short,
  full: short,
  basis,
});

it('leads to rules by their numbers: groups as they come, slots in their order, published sources first, media by name', () => {
  const pages = [
    page('a', {
      parts: [
        { slot: 'cover', title: 'Cover', attributes: [] },
        { slot: 'vessel', title: 'Vessel', attributes: [] },
      ],
      sources: [source('bores of the range', 'common practice'), source('EN 13445-3', 'published')],
      media: ['water'],
    }),
    page('b', {
      group: 'closure',
      parts: [
        { slot: 'cover', title: 'Cover', as: 'demand', attributes: [] },
        { slot: 'cover', title: 'Cover', as: 'limit', attributes: [] },
      ],
      sources: [source('EN 13445-3', 'published')],
      media: ['hydrogen', 'water'],
    }),
  ];
  const told = ruleIndexesOf(pages).map(({ title, entries }) => [
    title,
    ...entries.map((entry) => `${entry.title}: ${entry.rules.join(', ')}`),
  ]);
  expect(told).toEqual([
    ['By group', 'strength: 1', 'closure: 2'],
    ['By slot', 'Vessel: 1', 'Cover: 1, 2'],
    ['By source', 'EN 13445-3: 1, 2', 'bores of the range: 1'],
    ['By medium', 'hydrogen: 2', 'water: 1, 2'],
  ]);
});
