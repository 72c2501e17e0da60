import { demoCatalogue } from '@flangewise/catalogue';
import { type RuleResult, type Status, systemSchema } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import { assess, leastMarginOf } from './assess.js';
import { rangeOf } from './range.js';
import { ruleBook } from './rule-book.js';
import { burstBelowPs } from './rules/relief/burst-below-ps.js';
import { hotFill } from './rules/volume/hot-fill.js';

const result = (rule: { id: string; title: string }, status: Status, utilisation: number): RuleResult => ({
  rule: rule.id,
  title: rule.title,
  kind: 'hard',
  group: 'relief',
  slots: [],
  set: 0,
  source: [],
  status,
  unit: '1',
  utilisation,
  text: '',
  missing: [],
  evidence: [],
});

describe('least margin', () => {
  it('leaves out what may be used up in full', () => {
    const results = [result(burstBelowPs, 'met', 1), result(hotFill, 'met', 0.9)];
    expect(leastMarginOf(results, ruleBook)).toEqual({ value: 0.1, rule: hotFill.id, title: hotFill.title });
  });

  it('counts it once it is exceeded', () => {
    const results = [result(burstBelowPs, 'not met', 1.2), result(hotFill, 'met', 0.9)];
    expect(leastMarginOf(results, ruleBook)).toMatchObject({ value: -0.2, rule: burstBelowPs.id });
  });

  it('is none where nothing could be decided', () => {
    expect(leastMarginOf([], ruleBook)).toBeNull();
  });
});

it('holds back a system with a part that the range does not have', () => {
  const range = rangeOf(demoCatalogue, { deliveryDays: () => 0 });
  const system = systemSchema.parse({
    inquiry: { title: 'x' },
    sets: [{ choices: { vessel: 'VS-9999', relief: demoCatalogue.items[0]?.id } }],
  });
  const { undecided, releasable, blocking } = assess(system, { range, rules: ruleBook });
  expect(undecided).toContain('sets[0].vessel');
  expect(undecided).toContain('sets[0].relief');
  expect(releasable).toBe(false);
  expect(blocking.join()).toMatch(/slots not chosen/);
});

it('weighs the batch of each set that hangs on the frame', () => {
  const range = rangeOf(demoCatalogue, { deliveryDays: () => 0 });
  const first = (slot: string) => demoCatalogue.items.find((item) => item.slot === slot)?.id ?? null;
  const massWith = (second: string): number => {
    const hung = ['vessel', 'cover', 'closure', 'stirrer', 'shaft', 'coupling'];
    const none = { heater: null, coil: null, shield: null };
    const choices = { ...Object.fromEntries(hung.map((slot) => [slot, first(slot)])), ...none };
    const system = systemSchema.parse({
      inquiry: {
        title: 'x',
        process: { media: [{ substance: 'water', role: 'solvent' }] },
        arrangement: 'parallel',
        sets: [{ batchVolume: '1 L' }, { batchVolume: second }],
      },
      frame: { frame: first('frame'), lift: null, drive: first('drive') },
      sets: [{ choices }, { choices }],
    });
    const rules = ruleBook.filter(({ id }) => id === 'supply.frame-mass');
    const [result] = assess(system, { range, rules }).results;
    return typeof result?.demand === 'number' ? result.demand : Number.NaN;
  };
  expect(massWith('3 L') - massWith('1 L')).toBeCloseTo(2, 1);
});
