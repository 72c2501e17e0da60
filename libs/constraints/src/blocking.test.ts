import { type RuleResult, type Status, systemSchema } from '@flangewise/model';
import { expect, it } from 'vitest';
import { blockingOf } from './blocking.js';

const result = (
  title: string,
  status: Status,
  at: { set: number; slots: readonly string[] },
): RuleResult => ({
  rule: title,
  title,
  kind: 'hard',
  group: 'relief',
  source: [],
  status,
  unit: '1',
  text: '',
  missing: [],
  evidence: [],
  set: at.set,
  slots: [...at.slots],
});

const system = systemSchema.parse({
  inquiry: { title: 'x', process: {}, sets: [{}, {}] },
  sets: [{ label: 'glass', choices: {} }, { choices: {} }],
});

it('says once what one rule holds against several parts, and which', () => {
  const results = ['seal', 'shaft', 'seal'].map((slot) =>
    result('Every wetted part stands the media', 'not decidable', { set: 0, slots: [`sets[0].${slot}`] }),
  );
  expect(blockingOf(results, system, [])).toEqual([
    'Every wetted part stands the media: not decidable (Seal, Shaft)',
  ]);
});

it('names the sets where it holds for several', () => {
  const results = [0, 1].map((set) =>
    result('System opens below the ceiling', 'not met', { set, slots: [] }),
  );
  expect(blockingOf(results, system, [])).toEqual(['System opens below the ceiling: not met (glass, set 2)']);
});

it('tells states of one rule apart, the worst first, and passes over what does not block', () => {
  const at = { set: 0, slots: ['sets[0].seal'] };
  const results = (['met', 'not decidable', 'not met', 'met with caution'] as const).map((status) =>
    result('Rule', status, at),
  );
  expect(blockingOf(results, system, ['frame.drive'])).toEqual([
    'Rule: not met',
    'Rule: not decidable',
    '1 slot not chosen yet',
  ]);
});
