import { demoCatalogue } from '@flangewise/catalogue';
import type { Item } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { audit, type AuditProgress } from './audit.js';
import { gapsOf } from './audit-gaps.js';
import { createBench } from './bench.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';
import { burstBelowPs } from './rules/relief/burst-below-ps.js';
import { constructionWish } from './rules/wish/construction.js';

const benchOf = (items: readonly Item[], rules = ruleBook) =>
  createBench(rangeOf({ revision: 'test', items: [...items] }, { deliveryDays: () => 0 }), rules);

const disc = demoCatalogue.items.find((item) => item.slot === 'relief')!;
const tooStrong: Item = { ...disc, id: 'RD-9999', name: 'Disc for 1000 bar', burstPressurePaGauge: 1e8 };

describe('audit', () => {
  it('names an item that no system can have, with the rule that keeps it out', () => {
    const { deadItems } = audit(benchOf([...demoCatalogue.items, tooStrong], [burstBelowPs]));
    const found = deadItems.find(({ item }) => item === 'RD-9999');
    expect(found?.reason).toContain('Disc for 1000 bar');
    expect(found?.reason).toContain(burstBelowPs.title);
    expect(deadItems.map(({ item }) => item)).not.toContain(disc.id);
  });

  it('looks once at items that are alike to every rule, and names each of them', () => {
    const twins = [1, 2, 3].map((k) => ({
      ...tooStrong,
      ...{ id: `RD-999${String(k)}`, name: `Make ${String(k)}`, leadTimeDays: k },
    }));
    const { deadItems, items } = audit(benchOf([...demoCatalogue.items, ...twins], [burstBelowPs]));
    expect(items).toBe(demoCatalogue.items.length + twins.length);
    const reasons = twins.map(({ id }) => deadItems.find(({ item }) => item === id)?.reason ?? '');
    for (const [k, reason] of reasons.entries()) expect(reason).toContain(`Make ${String(k + 1)}: `);
    expect(new Set(reasons.map((reason) => reason.replace(/^[^:]*/, ''))).size).toBe(1);
  });

  it('names rules that others imply, and leaves those that only an inquiry makes bind', () => {
    const twin = { ...burstBelowPs, id: 'relief.twin', title: 'The same once more' };
    const { redundantRules } = audit(
      benchOf([...demoCatalogue.items, tooStrong], [burstBelowPs, twin, constructionWish]),
    );
    expect(redundantRules.map((text) => text.split(':')[0])).toEqual([burstBelowPs.id, 'relief.twin']);
  });

  it('says how far it is with the rules, and then with the inquiries, to their end', () => {
    const told: AuditProgress[] = [];
    audit(benchOf(demoCatalogue.items, [burstBelowPs]), (progress) => told.push(progress));
    const doing = told.map((one) => one.doing);
    expect(doing).toEqual([...doing].sort((a, b) => b.localeCompare(a)));
    for (const what of ['rules', 'inquiries'] as const) {
      const done = told.filter((one) => one.doing === what).map((one) => one.done);
      expect(done.length).toBeGreaterThan(1);
      expect(done).toEqual([...done].sort((a, b) => a - b));
    }
    expect(told.at(-1)?.done).toBe(told.at(-1)?.of);
  });

  it('finds a gap where the range lost its glass vessels, and none where it has them', () => {
    const rows = [
      { construction: 'glass', batchesL: [0.5], pressuresBarGauge: [0.5, 3], temperaturesC: [60, 100] },
    ];
    const withoutGlass = demoCatalogue.items.filter(
      (item) => item.slot !== 'vessel' || item.construction !== 'glass',
    );
    expect(gapsOf(benchOf(demoCatalogue.items), { rows })).toEqual([]);
    expect(gapsOf(benchOf(withoutGlass), { rows })).toEqual([
      'glass, batch of 0.5 L: nothing at any pressure asked (60, 100 °C).',
    ]);
  });
});
