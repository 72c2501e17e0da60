import type { System } from '@flangewise/model';
import { assessRule } from './assess-rule.js';
import type { Bench } from './bench.js';
import { chosenIn } from './chosen.js';
import { conditionsOf } from './conditions-of.js';

/** Whether no hard rule refuses a system as it is chosen: each rule by itself, without an engine. */
export const stands = (system: System, { range, rules }: Pick<Bench, 'range' | 'rules'>): boolean => {
  const all = system.sets.map(({ count }, set) => ({
    set,
    count,
    chosen: chosenIn(system, set, range.items),
    conditions: conditionsOf(system, set),
  }));
  return all.every((own) =>
    rules.every(
      (rule) =>
        rule.kind !== 'hard' ||
        assessRule(rule, { ...own, all, withEvidence: false }).every(({ status }) => status !== 'not met'),
    ),
  );
};
