import {
  type Evidence,
  type Item,
  type RuleResult,
  type SlotName,
  type SlotPath,
  slotPath,
  slots,
  type Status,
  worstStatus,
} from '@flangewise/model';
import type { Chosen } from './chosen.js';
import { compare, isAtMost } from './compare.js';
import { type Conditions, pickConditions } from './conditions.js';
import { fieldInWords } from './field-in-words.js';
import { type Figure, type Judgement, known, missing, type Proof, unverified } from './figure.js';
import type { PortsRule } from './ports-rule.js';
import type { ComparisonRule, JudgementRule, Measure, PartRule, Rule, SumRule } from './rule.js';
import { shownQuantity } from './shown-quantity.js';
import { hinderers, instead, isSpare, lackText, seatsText, setPortsOf } from './set-ports.js';
import { setsAtOnce } from './sets-at-once.js';

/** One set as a rule sees it: its parts and what they have to stand. */
export interface SetView {
  readonly set: number;
  readonly chosen: Chosen;
  readonly conditions: Conditions;
  /** Sets on the same frame, this one among them: for what the frame carries in sum. */
  readonly all: readonly {
    readonly set: number;
    readonly chosen: Chosen;
    readonly count: number;
    readonly conditions: Conditions;
  }[];
  readonly withEvidence: boolean;
  /** The range, where other parts of it may be named. */
  readonly items?: () => Iterable<Item>;
}

type Parts = Record<string, Item | null>;

/** The parts of these slots; undefined while one of them is not chosen. */
const partsOf = (names: readonly SlotName[], chosen: Chosen): Parts | undefined => {
  const parts: Parts = {};
  for (const name of names) {
    const part = chosen(name);
    if (part === undefined) return undefined;
    parts[name] = part;
  }
  return parts;
};

const headOf = (rule: Rule, slotsRead: readonly SlotName[], set: number) => ({
  rule: rule.id,
  title: rule.title,
  kind: rule.kind,
  group: rule.group,
  slots: slotsRead.map((slot) => slotPath(slot, set)),
  set,
  source: [...rule.source],
});

const collector = (wanted: boolean): { proof: Proof | undefined; evidence: Evidence[] } => {
  const evidence: Evidence[] = [];
  return { proof: wanted ? (e) => evidence.push(e) : undefined, evidence };
};

/** Caution and advice never fail: the worst that they say is "with caution". */
const softened = (rule: Rule, status: Status): Status =>
  rule.kind !== 'hard' && status === 'not met' ? 'met with caution' : status;

interface Sides {
  readonly demand: Figure;
  readonly limit: Figure;
  readonly say: (shown: { demand: string; limit: string }) => string;
}

const compared = (
  rule: Rule & Measure,
  sides: Sides,
  head: ReturnType<typeof headOf>,
): RuleResult | undefined => {
  const outcome = compare(sides.demand, sides.limit, rule);
  if (outcome.kind === 'not applicable') return undefined;
  if (outcome.kind === 'missing') {
    return {
      ...head,
      status: 'not decidable',
      unit: rule.unit,
      text: `${rule.title}: not decidable without ${outcome.missing.map(fieldInWords).join('; ')}.`,
      missing: [...outcome.missing],
      evidence: [],
      ...(outcome.demand === undefined ? {} : { demand: outcome.demand }),
      ...(outcome.limit === undefined ? {} : { limit: outcome.limit }),
    };
  }
  const { comparison } = outcome;
  const shown = {
    demand: shownQuantity(comparison.demand, rule.unit, 'up'),
    limit: shownQuantity(comparison.limit, rule.unit, 'down'),
  };
  const note = comparison.unverified === undefined ? '' : ` ${comparison.unverified}`;
  return {
    ...head,
    status: softened(rule, comparison.status),
    unit: rule.unit,
    demand: comparison.demand,
    limit: comparison.limit,
    reserve: comparison.reserve,
    shown: `${shown.demand} of ${shown.limit}`,
    text: `${sides.say(shown)}${note}`,
    missing: [],
    evidence: [],
    ...(comparison.utilisation === undefined ? {} : { utilisation: comparison.utilisation }),
  };
};

const assessComparison = (rule: ComparisonRule, view: SetView): RuleResult | undefined => {
  const names = [...new Set([...Object.keys(rule.demandOf), ...Object.keys(rule.limitOf)])] as SlotName[];
  const parts = partsOf(names, view.chosen);
  if (parts === undefined) return undefined;
  const conditions = pickConditions(view.conditions, rule.conditions) as never;
  const { proof, evidence } = collector(view.withEvidence);
  const demand = rule.demand(parts as never, conditions, proof);
  const limit = rule.limit(parts as never, conditions, proof);
  const say = (shown: { demand: string; limit: string }): string =>
    rule.say({ ...shown, parts: parts as never }, conditions);
  const result = compared(rule, { demand, limit, say }, headOf(rule, names, view.set));
  return result === undefined ? undefined : { ...result, evidence };
};

const judged = (
  rule: JudgementRule | PartRule,
  verdict: Judgement,
  head: ReturnType<typeof headOf>,
): RuleResult => ({
  ...head,
  status: softened(rule, verdict.status),
  unit: rule.unit ?? '1',
  text: verdict.text ?? rule.met,
  missing: [...(verdict.missing ?? [])],
  evidence: [],
  ...(verdict.demand === undefined ? {} : { demand: verdict.demand }),
  ...(verdict.limit === undefined ? {} : { limit: verdict.limit }),
  ...(verdict.utilisation === undefined ? {} : { utilisation: verdict.utilisation }),
  ...(typeof verdict.demand === 'number' && typeof verdict.limit === 'number'
    ? {
        reserve: verdict.limit - verdict.demand,
        shown: `${shownQuantity(verdict.demand, rule.unit ?? '1', 'up')} of ${shownQuantity(verdict.limit, rule.unit ?? '1', 'down')}`,
      }
    : {}),
});

const assessJudgement = (rule: JudgementRule, view: SetView): RuleResult | undefined => {
  const names = Object.keys(rule.of) as SlotName[];
  const parts = partsOf(names, view.chosen);
  if (parts === undefined) return undefined;
  const { proof, evidence } = collector(view.withEvidence);
  const verdict = rule.judge(
    parts as never,
    pickConditions(view.conditions, rule.conditions) as never,
    proof,
  );
  if (verdict === undefined) return undefined;
  return { ...judged(rule, verdict, headOf(rule, names, view.set)), evidence };
};

/** Parts that are fine share one result, with the highest utilisation; every other part has its own. */
const assessPart = (rule: PartRule, view: SetView): readonly RuleResult[] => {
  const conditions = pickConditions(view.conditions, rule.conditions) as never;
  const own: RuleResult[] = [];
  const fine: { slot: SlotName; result: RuleResult }[] = [];
  for (const slot of rule.each) {
    const part = view.chosen(slot);
    if (part === undefined || part === null) continue;
    const beside = partsOf(Object.keys(rule.beside) as SlotName[], view.chosen);
    if (beside === undefined) continue;
    const { proof, evidence } = collector(view.withEvidence);
    const verdict = rule.judge(part, conditions, { beside: beside as never, proof });
    if (verdict === undefined) continue;
    const result = { ...judged(rule, verdict, headOf(rule, [slot], view.set)), evidence };
    if (verdict.status === 'met') fine.push({ slot, result });
    else own.push(result);
  }
  const tightest = fine.reduce<{ slot: SlotName; result: RuleResult } | undefined>(
    (most, next) => ((next.result.utilisation ?? 0) > (most?.result.utilisation ?? -1) ? next : most),
    undefined,
  );
  if (tightest === undefined) return own;
  const merged = { ...tightest.result, slots: fine.map((f) => slotPath(f.slot, view.set)), text: rule.met };
  return [...own, merged];
};

/** Sets whose parts a sum counts together; none where another set has said it already. */
const setsInSum = (rule: SumRule, view: SetView): SetView['all'] => {
  const own = view.all.filter(({ set }) => set === view.set);
  if (rule.over === 'one vessel') return own.map((one) => ({ ...one, count: 1 }));
  const together = setsAtOnce(view.set, view.all.length, view.conditions);
  return together[0] === view.set ? view.all.filter(({ set }) => together.includes(set)) : [];
};

/** Parts that are too heavy by themselves are, whatever the batch; parts that are not tell nothing without it. */
const sumOf = (partsSum: number, constants: readonly Figure[], limit: Figure): Figure => {
  const fields = constants.flatMap((constant) => (constant.kind === 'missing' ? constant.missing : []));
  const values = constants.flatMap((constant) => (constant.kind === 'known' ? [constant] : []));
  const sum = values.reduce((total, { value }) => total + value, partsSum);
  const note = values.find((constant) => constant.unverified !== undefined)?.unverified;
  const most = limit.kind === 'known' ? (limit.special ?? limit.value) : Number.POSITIVE_INFINITY;
  if (fields.length > 0 && isAtMost(sum, most)) return missing(...fields);
  return note === undefined ? known(sum) : unverified(sum, note);
};

const assessSum = (rule: SumRule, view: SetView): RuleResult | undefined => {
  const views = setsInSum(rule, view);
  const names = Object.keys(rule.limitOf) as SlotName[];
  const parts = partsOf(names, view.chosen);
  if (parts === undefined || views.length === 0) return undefined;
  const counted = new Set<SlotPath>();
  const constants: Figure[] = [];
  let partsSum = 0;
  for (const { set, chosen, count, conditions } of views) {
    const own = pickConditions(conditions, rule.conditions) as never;
    const constant = rule.constant?.(own);
    if (constant?.kind === 'known') constants.push({ ...constant, value: constant.value * count });
    else if (constant !== undefined) constants.push(constant);
    for (const slot of rule.terms) {
      const path = slotPath(slot, set);
      const part = chosen(slot);
      if (part === undefined) return undefined;
      if (part === null || counted.has(path)) continue;
      counted.add(path);
      partsSum += rule.term(part, own) * (slots[slot].place === 'frame' ? 1 : count);
    }
  }
  const limit = rule.limit(parts as never, pickConditions(view.conditions, rule.conditions) as never);
  const sides: Sides = {
    demand: sumOf(partsSum, constants, limit),
    limit,
    say: (shown) => rule.say({ ...shown, parts: parts as never }),
  };
  const head = headOf(rule, names, view.set);
  return compared(rule, sides, { ...head, slots: [...new Set([...head.slots, ...counted])] });
};

const assessPorts = (rule: PortsRule, view: SetView): RuleResult | undefined => {
  const ports = setPortsOf(rule, view.chosen, view.conditions.freePortsM);
  if (ports === undefined) return undefined;
  const { cover, users, assignment } = ports;
  const inTheWay = hinderers(rule, ports);
  const slotsRead = [rule.host, ...users.filter((u) => !isSpare(u)).map((u) => u.slot), ...inTheWay];
  const base = {
    ...headOf(rule, [...new Set(slotsRead)], view.set),
    unit: '1',
    missing: [],
    evidence: [],
    demand: users.length,
    limit: cover.ports.length,
    shown: `${String(users.length)} of ${String(cover.ports.length)} ports`,
  };
  if (assignment.unplaced.length === 0)
    return { ...base, status: 'met', text: `${rule.met} ${seatsText(ports)}` };
  const others = view.items === undefined ? '' : ` ${instead(rule, ports, view.items())}`;
  return { ...base, status: 'not met', text: `${lackText(rule, ports)}${others}` };
};

/** A rule on the chosen parts of one set. Nothing is said while a part that it reads is not chosen. */
export const assessRule = (rule: Rule, view: SetView): readonly RuleResult[] => {
  const one = (result: RuleResult | undefined): readonly RuleResult[] =>
    result === undefined ? [] : [result];
  switch (rule.form) {
    case 'comparison':
      return one(assessComparison(rule, view));
    case 'judgement':
      return one(assessJudgement(rule, view));
    case 'part':
      return assessPart(rule, view);
    case 'sum':
      return one(assessSum(rule, view));
    case 'ports':
      return one(assessPorts(rule, view));
  }
};

export const statusOf = (results: readonly RuleResult[]): Status => worstStatus(results.map((r) => r.status));
