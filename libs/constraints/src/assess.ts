import {
  type Assessment,
  frameSlots,
  type LeastMargin,
  type RuleResult,
  setSlots,
  slotPath,
  type Status,
  statusRank,
  type System,
  usualCaution,
} from '@flangewise/model';
import { assessRule, type SetView, statusOf } from './assess-rule.js';
import { blockingOf } from './blocking.js';
import { type Chosen, chosenIn } from './chosen.js';
import { conformityOf } from './conformity.js';
import { conditionsOf } from './conditions-of.js';
import { openPointsOf } from './open-points.js';
import type { Range } from './range.js';
import type { Rule } from './rule.js';
import { ruleRevision } from './rule-revision.js';
import { sentenceCase } from './sentence-case.js';

export const generalCaution = usualCaution('This assessment');

/** Slots that nobody has chosen yet, or that name a part which the range does not have. */
const undecidedSlots = (system: System, chosen: readonly Chosen[]): string[] => [
  ...frameSlots.filter((slot) => chosen[0]?.(slot) === undefined).map((slot) => slotPath(slot)),
  ...system.sets.flatMap((_, index) =>
    setSlots.filter((slot) => chosen[index]?.(slot) === undefined).map((slot) => slotPath(slot, index)),
  ),
];

/** Rules whose limit may be used up in full without getting nearer to danger: places, ranges, set pressures. */
const mayBeUsedUp = (rule: Rule): boolean => 'cautionFrom' in rule && (rule.cautionFrom ?? 0) > 1;

/**
 * The tightest check that could be decided: what fails first. A special is reviewed by itself; what may be used up in
 * full counts only once it is exceeded.
 */
export const leastMarginOf = (results: readonly RuleResult[], rules: readonly Rule[]): LeastMargin | null => {
  const usedUp = new Set(rules.filter(mayBeUsedUp).map((rule) => rule.id));
  const decided = results.filter(
    (r) =>
      r.kind === 'hard' &&
      r.utilisation !== undefined &&
      r.status !== 'outside standard range' &&
      (r.status === 'not met' || !usedUp.has(r.rule)),
  );
  const tightest = decided.reduce<RuleResult | undefined>(
    (worst, next) =>
      (next.utilisation ?? 0) > (worst?.utilisation ?? Number.NEGATIVE_INFINITY) ? next : worst,
    undefined,
  );
  if (tightest?.utilisation === undefined) return null;
  return {
    value: Number((1 - tightest.utilisation).toPrecision(12)),
    rule: tightest.rule,
    title: tightest.title,
  };
};

/** Worst first, then the tightest. */
const byUrgency = (a: RuleResult, b: RuleResult): number =>
  statusRank[a.status] - statusRank[b.status] || (b.utilisation ?? -1) - (a.utilisation ?? -1);

const isSoft = (result: RuleResult): boolean => result.kind !== 'hard';

export interface AssessOptions {
  /** Also the steps of every calculation; slower. */
  readonly withEvidence?: boolean;
  /** Somebody entitled to it released what lies outside the standard range: it no longer blocks. */
  readonly specialsReleased?: boolean;
}

/** Every rule on one system: what it demands, what the parts give, what is left, and what nobody has said yet. */
export const assess = (
  system: System,
  bench: { readonly range: Range; readonly rules: readonly Rule[] },
  options: AssessOptions = {},
): Assessment => {
  const all = system.sets.map((set, index) => ({
    set: index,
    count: set.count,
    chosen: chosenIn(system, index, bench.range.items),
    conditions: conditionsOf(system, index),
  }));
  const conditions = all.map((one) => one.conditions);
  const results = all
    .flatMap(({ set, chosen, conditions: own }) => {
      const view: SetView = {
        set,
        chosen,
        conditions: own,
        all,
        withEvidence: options.withEvidence ?? false,
        items: () => bench.range.items.values(),
      };
      return bench.rules.flatMap((rule) => assessRule(rule, view));
    })
    .map((result) => ({ ...result, text: sentenceCase(result.text) }))
    .sort(byUrgency);
  const undecided = undecidedSlots(
    system,
    all.map(({ chosen }) => chosen),
  );
  const stopping =
    options.specialsReleased === true
      ? results.filter(({ status }) => status !== 'outside standard range')
      : results;
  const blocking = blockingOf(stopping, system, undecided);
  const hardStatus: Status = statusOf(results.filter((r) => !isSoft(r)));
  const cautions = results.filter((r) => isSoft(r) && r.status === 'met with caution').map((r) => r.text);
  return {
    catalogueRevision: bench.range.revision,
    ruleRevision,
    status: hardStatus === 'met' && cautions.length > 0 ? 'met with caution' : hardStatus,
    leastMargin: leastMarginOf(results, bench.rules),
    results,
    openPoints: [...openPointsOf(system, conditions, results)],
    cautions: [...new Set([...cautions, generalCaution])],
    conformity: [...conformityOf(system, conditions, all)],
    undecided,
    releasable: blocking.length === 0,
    blocking,
  };
};
