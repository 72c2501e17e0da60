import { type ConstraintSpec, createEngine, type Engine, type VariableSpec } from '@flangewise/solver';
import type { Item } from '@flangewise/model';
import type { ConditionName, Conditions } from './conditions.js';
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
/** Engines kept at once, each for conditions of its own: one goes back and forth between few. */
const mostEngines = 6;

interface Kept extends Compiled {
  readonly specs: ReadonlyMap<string, ConstraintSpec>;
  /** Engines of one shape have the same variables and constraints of the same ids. */
  readonly shape: string;
}

/** The conditions of one set as text, each by itself. */
type Told = ReadonlyMap<string, string>;

const toldOf = (conditions: Conditions): Told =>
  new Map(Object.entries(conditions).map(([name, value]) => [name, JSON.stringify(value)]));

const tellingOf = (told: Told, names: readonly ConditionName[]): string =>
  names.map((name) => told.get(name) ?? '').join('|');

/** All that the tables of a rule for one set follow from: its own conditions, or those of all sets with their counts. */
const readBy = (
  rule: Rule,
  set: number,
  all: { told: readonly Told[]; counts: readonly number[] },
): string =>
  rule.form === 'sum' && rule.over === 'vessels at once'
    ? [all.counts.join(), ...all.told.map((own) => tellingOf(own, [...rule.conditions, 'arrangement']))].join(
        '||',
      )
    : tellingOf(all.told[set] ?? new Map(), rule.conditions);

export const createCompiler = (range: Range, rules: readonly Rule[]): Compiler => {
  const variablesFor = new Map<number, readonly SlotVariable[]>();
  const tables = new Map<string, readonly ConstraintSpec[]>();
  /** By all conditions and counts, the latest last. */
  const engines = new Map<string, Kept>();

  const variablesOf = (sets: number): readonly SlotVariable[] => {
    const found = variablesFor.get(sets) ?? slotVariables({ items: [...range.items.values()] }, sets);
    variablesFor.set(sets, found);
    return found;
  };

  const tablesOf = (rule: Rule, site: Site, at: { set: number; key: string }) => {
    const key = `${rule.id}|${String(at.set)}|${String(site.conditions.length)}|${at.key}`;
    const found = tables.get(key);
    if (found !== undefined) return found;
    if (tables.size >= mostTables) tables.clear();
    const built = tabulate(rule, site, at.set);
    tables.set(key, built);
    return built;
  };

  /** An engine for other conditions of the same shape goes over into this one where it can. */
  const engineOf = (site: Site, specs: Kept['specs'], before: Kept | undefined): Engine =>
    before === undefined
      ? createEngine({
          variables: site.variables.map((v) =>
            variableSpec(v, range, v.set === undefined ? 1 : (site.counts[v.set] ?? 1)),
          ),
          constraints: [...specs.values()],
        })
      : before.engine.replaceConstraints(
          [...specs.values()].filter((spec) => before.specs.get(spec.id) !== spec),
        );

  const keep = (key: string, kept: Kept): Kept => {
    engines.delete(key);
    engines.set(key, kept);
    const [oldest] = engines.keys();
    if (engines.size > mostEngines && oldest !== undefined) engines.delete(oldest);
    return kept;
  };

  return {
    compile(conditions, counts) {
      const told = conditions.map(toldOf);
      const key = JSON.stringify([counts, told.map((own) => [...own])]);
      const known = engines.get(key);
      if (known !== undefined) return keep(key, known);
      const variables = variablesOf(conditions.length);
      const site = { variables, conditions, counts };
      const specs = new Map(
        conditions.flatMap((_, set) =>
          rules.flatMap((rule) =>
            tablesOf(rule, site, { set, key: readBy(rule, set, { told, counts }) }).map(
              (spec) => [spec.id, spec] as const,
            ),
          ),
        ),
      );
      // Sets that are mounted in turn have sums of their own, sets that work at once share one.
      const shape = `${conditions[0]?.arrangement ?? ''} ${counts.join()}`;
      const before = [...engines.values()].findLast((one) => one.shape === shape);
      return keep(key, { variables, engine: engineOf(site, specs, before), specs, shape });
    },
  };
};
