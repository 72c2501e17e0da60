import { type ConstraintSpec, createEngine, type Engine, type VariableSpec } from '@flangewise/solver';
import type { Item } from '@flangewise/model';
import { type Conditions, pickConditions } from './conditions.js';
import type { Range } from './range.js';
import type { Rule } from './rule.js';
import { type Site, tabulate } from './tabulate.js';
import { slotVariables, type SlotVariable } from './variable.js';

export interface Compiled {
  readonly variables: readonly SlotVariable[];
  readonly engine: Engine;
}

/** Compiles a range under conditions; only rules whose conditions changed are tabulated again. */
export interface Compiler {
  compile(conditions: readonly Conditions[], counts: readonly number[]): Compiled;
}

const variableSpec = (variable: SlotVariable, range: Range, count: number): VariableSpec => {
  const priceOf = (item: Item | null): number =>
    item === null ? 0 : (range.prices?.get(item.id) ?? 0) * count;
  return {
    id: variable.path,
    size: variable.options.length,
    cost: Int32Array.from(variable.options, priceOf),
    delay: Int32Array.from(variable.options, (item) => item?.leadTimeDays ?? 0),
  };
};

/** Tables kept at once; beyond it all are dropped and built anew as needed. */
const mostTables = 3000;

interface Kept extends Compiled {
  readonly specs: ReadonlyMap<string, ConstraintSpec>;
}

/** All that the tables of a rule for one set follow from: its own conditions, or those of all sets with their counts. */
const readBy = (rule: Rule, site: Site, own: Conditions): unknown =>
  rule.form === 'sum' && rule.over === 'vessels at once'
    ? [site.counts, site.conditions.map((c) => pickConditions(c, [...rule.conditions, 'arrangement']))]
    : pickConditions(own, rule.conditions);

export const createCompiler = (range: Range, rules: readonly Rule[]): Compiler => {
  const variablesFor = new Map<number, readonly SlotVariable[]>();
  const tables = new Map<string, readonly ConstraintSpec[]>();
  const last = new Map<string, Kept>();

  const variablesOf = (sets: number): readonly SlotVariable[] => {
    const found = variablesFor.get(sets) ?? slotVariables({ items: [...range.items.values()] }, sets);
    variablesFor.set(sets, found);
    return found;
  };

  const constraintsOf = (rule: Rule, site: Site, set: number) => {
    const own = site.conditions[set];
    if (own === undefined) return [];
    const key = `${rule.id}|${String(set)}|${String(site.conditions.length)}|${JSON.stringify(readBy(rule, site, own))}`;
    const found = tables.get(key);
    if (found !== undefined) return found;
    if (tables.size >= mostTables) tables.clear();
    const built = tabulate(rule, site, set);
    tables.set(key, built);
    return built;
  };

  return {
    compile(conditions, counts) {
      const variables = variablesOf(conditions.length);
      const site = { variables, conditions, counts };
      const specs = new Map(
        conditions.flatMap((_, set) =>
          rules.flatMap((rule) => constraintsOf(rule, site, set).map((spec) => [spec.id, spec] as const)),
        ),
      );
      // Sets that are mounted in turn have sums of their own, sets that work at once share one.
      const shape = `${conditions[0]?.arrangement ?? ''} ${counts.join()}`;
      const before = last.get(shape);
      const changed = [...specs.values()].filter((spec) => before?.specs.get(spec.id) !== spec);
      if (before !== undefined && changed.length === 0) return before;
      const engine =
        before === undefined
          ? createEngine({
              variables: variables.map((v) =>
                variableSpec(v, range, v.set === undefined ? 1 : (counts[v.set] ?? 1)),
              ),
              constraints: [...specs.values()],
            })
          : before.engine.replaceConstraints(changed);
      const kept: Kept = { variables, engine, specs };
      last.set(shape, kept);
      return kept;
    },
  };
};
