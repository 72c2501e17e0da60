import type { ConstraintSpec, Side } from '@flangewise/solver';
import { type Item, type SlotName, slots } from '@flangewise/model';
import { classesOf, forEachTuple } from './classes.js';
import { type Conditions, pickConditions } from './conditions.js';
import type { Figure } from './figure.js';
import type { ComparisonRule, JudgementRule, PartRule, Reads, Rounding, Rule, SumRule } from './rule.js';
import { setsAtOnce } from './sets-at-once.js';
import { tabulatePorts } from './tabulate-ports.js';
import type { SlotVariable } from './variable.js';

/** Where the slots of a rule stand for one set. */
export type Locate = (slot: SlotName) => {
  readonly variable: number;
  readonly options: readonly (Item | null)[];
};

export const locateIn =
  (variables: readonly SlotVariable[], set: number): Locate =>
  (slot) => {
    const variable = variables.findIndex((v) => v.slot === slot && (v.set === undefined || v.set === set));
    const found = variables[variable];
    if (found === undefined) throw new Error(`slot ${slot} does not exist for set ${String(set)}`);
    return { variable, options: found.options };
  };

const scopeOf = (reads: Reads, locate: Locate, rounded?: Rounding) =>
  (Object.entries(reads) as [SlotName, readonly string[]][]).map(([slot, attributes]) => {
    const { variable, options } = locate(slot);
    return { slot, variable, classes: classesOf(options, attributes, rounded) };
  });

type Scope = ReturnType<typeof scopeOf>;

const sideOf = (scope: Scope, valueOf: (parts: Record<string, Item | null>) => number): Side => {
  const values = new Float64Array(scope.reduce((n, s) => n * s.classes.representatives.length, 1));
  forEachTuple(scope, (parts, index) => {
    values[index] = valueOf(parts);
  });
  return {
    scope: scope.map((s) => s.variable),
    classOf: scope.map((s) => s.classes.classOf),
    classCount: scope.map((s) => s.classes.representatives.length),
    values,
  };
};

/** What is not known, or does not apply, never removes an option. */
const asDemand = (figure: Figure): number =>
  figure.kind === 'known' ? figure.value : Number.NEGATIVE_INFINITY;
const asLimit = (figure: Figure): number =>
  figure.kind === 'known' ? (figure.special ?? figure.value) : Number.POSITIVE_INFINITY;

const tabulateComparison = (
  id: string,
  rule: ComparisonRule,
  at: { conditions: Conditions; locate: Locate },
): ConstraintSpec => {
  const conditions = pickConditions(at.conditions, rule.conditions);
  return {
    kind: 'comparison',
    id,
    demand: sideOf(scopeOf(rule.demandOf, at.locate, rule.rounded), (parts) =>
      asDemand(rule.demand(parts as never, conditions as never)),
    ),
    limit: sideOf(scopeOf(rule.limitOf, at.locate, rule.rounded), (parts) =>
      asLimit(rule.limit(parts as never, conditions as never)),
    ),
    ...(rule.utilisation === 'ratio' ? { margin: 'ratio' as const } : {}),
  };
};

const tableOf = (
  id: string,
  scope: Scope,
  isAllowed: (parts: Record<string, Item | null>) => boolean,
): ConstraintSpec => {
  const allowed = new Uint8Array(scope.reduce((n, s) => n * s.classes.representatives.length, 1));
  forEachTuple(scope, (parts, index) => {
    allowed[index] = isAllowed(parts) ? 1 : 0;
  });
  return {
    kind: 'table',
    id,
    scope: scope.map((s) => s.variable),
    classOf: scope.map((s) => s.classes.classOf),
    classCount: scope.map((s) => s.classes.representatives.length),
    allowed,
  };
};

const tabulateJudgement = (
  id: string,
  rule: JudgementRule,
  at: { conditions: Conditions; locate: Locate },
): ConstraintSpec => {
  const conditions = pickConditions(at.conditions, rule.conditions);
  return tableOf(
    id,
    scopeOf(rule.of, at.locate),
    (parts) => rule.judge(parts as never, conditions as never)?.status !== 'not met',
  );
};

const tabulatePart = (
  rule: PartRule,
  at: { conditions: Conditions; locate: Locate; suffix: string },
): ConstraintSpec[] => {
  const conditions = pickConditions(at.conditions, rule.conditions);
  return rule.each.map((slot) => {
    const beside = scopeOf(rule.beside, at.locate).filter((s) => s.slot !== slot);
    const scope = [...scopeOf({ [slot]: [...rule.reads, 'slot'] }, at.locate), ...beside];
    return tableOf(`${rule.id} ${slot} ${at.suffix}`, scope, (parts) => {
      const part = parts[slot];
      if (part === null || part === undefined) return true;
      return rule.judge(part, conditions as never, { beside: parts as never })?.status !== 'not met';
    });
  });
};

/** One set in a sum: its parts, what it has to stand, and how many of it there are. */
interface Place {
  readonly locate: Locate;
  readonly conditions: Conditions;
  readonly count: number;
}

const tabulateSum = (id: string, rule: SumRule, places: readonly [Place, ...Place[]]): ConstraintSpec => {
  const seen = new Set<number>();
  let fixed = 0;
  const terms = places.flatMap((place) => {
    const own = pickConditions(place.conditions, rule.conditions) as never;
    const constant = rule.constant?.(own);
    if (constant?.kind === 'known') fixed += constant.value * place.count;
    return rule.terms.flatMap((slot) => {
      const { variable, options } = place.locate(slot);
      if (seen.has(variable)) return [];
      seen.add(variable);
      const count = slots[slot].place === 'frame' ? 1 : place.count;
      return [
        {
          variable,
          weights: Float64Array.from(options, (o) => (o === null ? 0 : rule.term(o, own) * count)),
        },
      ];
    });
  });
  const [{ locate }] = places;
  const conditions = pickConditions(places[0].conditions, rule.conditions);
  const [slot] = Object.keys(rule.limitOf) as SlotName[];
  const limitOf = (parts: Record<string, Item | null>): number =>
    asLimit(rule.limit(parts as never, conditions as never)) - fixed;
  if (slot === undefined) return { kind: 'sum', id, terms, limit: { constant: limitOf({}) } };
  const { variable, options } = locate(slot);
  return {
    kind: 'sum',
    id,
    terms,
    limit: { variable, values: Float64Array.from(options, (o) => limitOf({ [slot]: o })) },
    margin: 'ratio',
  };
};

export interface Site {
  readonly variables: readonly SlotVariable[];
  /** Conditions of every set, and how many vessels it has. */
  readonly conditions: readonly Conditions[];
  readonly counts: readonly number[];
}

const placeOf = (site: Site, set: number): Place & { readonly set: number } => {
  const conditions = site.conditions[set];
  if (conditions === undefined) throw new Error(`set ${String(set)} has no conditions`);
  return { set, locate: locateIn(site.variables, set), conditions, count: site.counts[set] ?? 1 };
};

/** The constraints that a hard rule puts on one set. A caution or an advice removes nothing and is not tabulated. */
export const tabulate = (rule: Rule, site: Site, set: number): readonly ConstraintSpec[] => {
  const conditions = site.conditions[set];
  if (conditions === undefined || rule.kind !== 'hard') return [];
  const locate = locateIn(site.variables, set);
  const id = `${rule.id} [${String(set)}]`;
  switch (rule.form) {
    case 'comparison':
      return [tabulateComparison(id, rule, { conditions, locate })];
    case 'judgement':
      return [tabulateJudgement(id, rule, { conditions, locate })];
    case 'part':
      return tabulatePart(rule, { conditions, locate, suffix: `[${String(set)}]` });
    case 'ports':
      return [tabulatePorts(id, rule, { conditions: pickConditions(conditions, rule.conditions), locate })];
    case 'sum': {
      if (rule.over === 'one vessel') return [tabulateSum(id, rule, [{ locate, conditions, count: 1 }])];
      const [first, ...others] = setsAtOnce(set, site.conditions.length, conditions).map((k) =>
        placeOf(site, k),
      );
      return first === undefined || set !== first.set ? [] : [tabulateSum(id, rule, [first, ...others])];
    }
  }
};

/** The rule that a constraint came from. */
export const ruleIdOf = (constraintId: string): string => constraintId.split(' ')[0] ?? constraintId;

/** The set that a constraint belongs to. */
export const setOf = (constraintId: string): number => Number(/\[(\d+)\]$/.exec(constraintId)?.[1] ?? 0);
