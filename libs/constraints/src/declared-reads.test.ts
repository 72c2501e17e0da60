import { demoCatalogue } from '@flangewise/catalogue';
import { type Item, type SlotName, slots } from '@flangewise/model';
import { describe, expect, it } from 'vitest';
import type { Conditions } from './conditions.js';
import { pickConditions } from './conditions.js';
import { met } from './figure.js';
import { judgement, type Reads, type Rule } from './rule.js';
import { interlock } from './rules/closure/interlock.js';
import { ruleBook } from './rule-book.js';
import { richConditions } from './testing/rich-conditions.js';

/** May always be read: they name the part in the text of a result and stand for no attribute of it. */
const free = ['name', 'id', 'slot'];

class Undeclared extends Error {}

/** The item as a rule may see it: whatever else is read throws. */
const restricted = (item: Item | null, declared: readonly string[], rule: string): Item | null => {
  if (item === null) return null;
  const allowed = new Set([...declared, ...free]);
  return new Proxy(item, {
    get: (target, key) => {
      if (typeof key === 'string' && !allowed.has(key))
        throw new Undeclared(`${rule} reads ${target.slot}.${key} and does not declare it`);
      return Reflect.get(target, key) as unknown;
    },
    ownKeys: (target) => Reflect.ownKeys(target).filter((key) => typeof key === 'string' && allowed.has(key)),
  });
};

const restrictedConditions = (conditions: Conditions, rule: Rule): Conditions => {
  const declared = new Set<string>(rule.conditions);
  return new Proxy(pickConditions(conditions, rule.conditions) as Conditions, {
    get: (target, key) => {
      if (typeof key === 'string' && !declared.has(key))
        throw new Undeclared(`${rule.id} reads the condition ${key} and does not declare it`);
      return Reflect.get(target, key) as unknown;
    },
  });
};

const optionsOf = (slot: SlotName): readonly (Item | null)[] => {
  const items = demoCatalogue.items.filter((item) => item.slot === slot);
  return slots[slot].optional ? [null, ...items] : items;
};

/** Rounds in which every option of every slot stands at least once, each time beside others. */
const tuplesOf = (names: readonly SlotName[]): readonly Record<string, Item | null>[] => {
  const options = names.map(optionsOf);
  const most = Math.max(1, ...options.map((list) => list.length));
  const strides = [1];
  return strides.flatMap((stride) =>
    Array.from({ length: most }, (_, round) =>
      Object.fromEntries(
        names.map((name, k) => {
          const list = options[k] ?? [];
          return [name, list[(round * (k === 0 ? 1 : stride) + k) % list.length] ?? null];
        }),
      ),
    ),
  );
};

const seen = (tuple: Record<string, Item | null>, reads: Reads, rule: Rule) =>
  Object.fromEntries(
    (Object.entries(reads) as [SlotName, readonly string[]][]).map(([slot, declared]) => [
      slot,
      restricted(tuple[slot] ?? null, declared, rule.id),
    ]),
  );

const both = (first: Reads, second: Reads): Reads => {
  const names = new Set([...Object.keys(first), ...Object.keys(second)]) as Set<SlotName>;
  return Object.fromEntries(
    [...names].map((slot) => [slot, [...(first[slot] ?? []), ...(second[slot] ?? [])]]),
  ) as Reads;
};

/** Every function of the rule, with a collector of evidence, which asks for no less than a plain call. */
const callOf = (rule: Rule, conditions: Conditions): void => {
  const own = restrictedConditions(conditions, rule) as never;
  const collect = (): void => undefined;
  switch (rule.form) {
    case 'comparison': {
      const names = Object.keys(both(rule.demandOf, rule.limitOf)) as SlotName[];
      for (const tuple of tuplesOf(names)) {
        rule.demand(seen(tuple, rule.demandOf, rule) as never, own, collect);
        rule.limit(seen(tuple, rule.limitOf, rule) as never, own, collect);
        const parts = seen(tuple, both(rule.demandOf, rule.limitOf), rule) as never;
        rule.say({ demand: '1', limit: '2', parts }, own);
      }
      return;
    }
    case 'judgement':
      for (const tuple of tuplesOf(Object.keys(rule.of) as SlotName[])) {
        rule.judge(seen(tuple, rule.of, rule) as never, own, collect);
      }
      return;
    case 'part': {
      const others = Object.keys(rule.beside) as SlotName[];
      for (const slot of rule.each) {
        for (const tuple of tuplesOf([slot, ...others.filter((o) => o !== slot)])) {
          const part = restricted(tuple[slot] ?? null, rule.reads, rule.id);
          if (part === null) continue;
          rule.judge(part, own, { beside: seen(tuple, rule.beside, rule) as never, proof: collect });
        }
      }
      return;
    }
    case 'sum': {
      rule.constant?.(own);
      for (const slot of rule.terms)
        for (const item of optionsOf(slot)) if (item !== null) rule.term(item, own);
      for (const tuple of tuplesOf(Object.keys(rule.limitOf) as SlotName[])) {
        const parts = seen(tuple, rule.limitOf, rule) as never;
        rule.limit(parts, own);
        rule.say({ demand: '1', limit: '2', parts });
      }
      return;
    }
    case 'ports':
      for (const cover of optionsOf(rule.host))
        for (const obstacle of rule.obstacles)
          for (const item of optionsOf(obstacle.slot)) {
            const part = restricted(item, obstacle.reads, rule.id);
            if (part !== null && cover?.slot === 'cover')
              for (const port of cover.ports) obstacle.leaves(port, part, cover.bore);
          }
      return;
  }
};

describe('what a rule reads', () => {
  it('is caught when it is not declared, of a part or of the conditions', () => {
    const greedy = judgement({
      ...interlock,
      of: { closure: ['kind'] },
      judge: ({ closure }) => ((closure as { interlock?: boolean }).interlock === true ? met : undefined),
    });
    expect(() => callOf(greedy, richConditions[0]!)).toThrow(/closure\.interlock/);
    const curious = judgement({
      ...interlock,
      judge: (_, conditions) => ((conditions as { zone?: string }).zone === '1' ? met : undefined),
    });
    expect(() => callOf(curious, richConditions[0]!)).toThrow(/condition zone/);
  });

  it.each(ruleBook.map((rule) => ({ id: rule.id, rule })))(
    '$id reads what it declares and nothing else, over every item of the range',
    ({ rule }) => {
      for (const conditions of richConditions) expect(() => callOf(rule, conditions)).not.toThrow();
    },
  );
});
