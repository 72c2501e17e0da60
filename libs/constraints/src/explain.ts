import type { Change, ExplainAnswer, Item, RuleResult, Statement, System } from '@flangewise/model';
import { slotPath } from '@flangewise/model';
import { assess } from './assess.js';
import { type Bench, compileFor } from './bench.js';
import { cheapest, type Filled, isPossible } from './cheapest.js';
import { choiceAt, engineChoices, filledWith, optionAt } from './choices.js';
import { furthest } from './furthest.js';
import { minimalConflict } from './minimal-conflict.js';
import { ruleRevision } from './rule-revision.js';
import { specialVesselsFor } from './special-candidates.js';
import { benchOf, specialsOf } from './special-vessel.js';
import { ruleIdOf } from './tabulate.js';
import {
  type ChoiceStatement,
  inquiryStatements,
  reachOf,
  shownLimit,
  type SystemStatement,
} from './statements.js';
import type { SlotVariable } from './variable.js';

const withoutChoice = (system: System, variable: SlotVariable): System => {
  if (variable.set === undefined)
    return { ...system, frame: { ...system.frame, [variable.slot]: undefined } };
  return {
    ...system,
    sets: system.sets.map((set, k) =>
      k === variable.set ? { ...set, choices: { ...set.choices, [variable.slot]: undefined } } : set,
    ),
  };
};

const choiceStatements = (system: System, bench: Bench): readonly ChoiceStatement[] =>
  compileFor(system, bench).variables.flatMap((variable) => {
    const chosen = choiceAt(system, variable);
    if (chosen === undefined) return [];
    const name = chosen === null ? `no ${variable.slot}` : (bench.range.items.get(chosen)?.name ?? chosen);
    return [
      {
        kind: 'choice',
        path: slotPath(variable.slot, variable.set),
        value: chosen,
        text: name,
        without: (s: System) => withoutChoice(s, variable),
      } satisfies ChoiceStatement,
    ];
  });

const allBut = (system: System, all: readonly SystemStatement[], kept: readonly SystemStatement[]): System =>
  all.filter((s) => !kept.includes(s)).reduce((reduced, s) => s.without(reduced), system);

interface RuleText {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

/** What somebody said and chose, with its statements and a way to ask whether some of them hold together. */
interface Question {
  readonly system: System;
  readonly statements: readonly SystemStatement[];
  readonly bench: Bench;
  readonly holds: (kept: readonly SystemStatement[]) => boolean;
}

const questionOf = (system: System, bench: Bench): Question => {
  const statements = [...inquiryStatements(system), ...choiceStatements(system, bench)];
  return {
    system,
    statements,
    bench,
    holds: (kept) => isPossible(allBut(system, statements, kept), bench),
  };
};

/** The result that says most about a rule: of its failing ones that of the vessel, else the worst. */
const tellingOf = (failing: readonly RuleResult[], rule: string): RuleResult | undefined => {
  const own = failing.filter((r) => r.rule === rule);
  return own.find((r) => r.slots.some((path) => path.endsWith('.vessel'))) ?? own[0];
};

const failingIn = (system: System, bench: Bench): readonly RuleResult[] =>
  assess(system, bench).results.filter(({ kind, status }) => kind === 'hard' && status === 'not met');

/**
 * The rules that keep these statements apart, with numbers: those that fail as the parts are chosen, else those that
 * the nearest system fails, which one of the statements had to leave.
 */
const rulesBetween = (question: Question, conflict: readonly SystemStatement[]): readonly RuleText[] => {
  const asked = allBut(question.system, question.statements, conflict);
  const named = constraintsBetween(asked, question.bench);
  const told = (failing: readonly RuleResult[]): readonly RuleText[] =>
    named.flatMap((rule) => {
      const result = tellingOf(failing, rule.id);
      return result === undefined ? [] : [{ ...rule, text: result.text }];
    });
  const seen = told(failingIn(question.system, question.bench));
  if (seen.length > 0) return seen;
  // Nearest with all else that was said and chosen; where that leaves nothing, with the conflict alone. That a wish is
  // not met says less than what keeps it from being met.
  const nearest = [question.system, asked].flatMap((whole) =>
    conflict.flatMap((statement) => {
      const filled = cheapest(statement.without(whole), question.bench);
      const texts = filled === undefined ? [] : told(failingIn(filledWith(whole, filled), question.bench));
      return texts.length === 0 ? [] : [texts];
    }),
  );
  return nearest.find((texts) => texts.some(({ id }) => !id.startsWith('wish.'))) ?? nearest[0] ?? named;
};

/** The rules of the engine's own conflict, by title: where no nearest system has numbers to show. */
const constraintsBetween = (asked: System, bench: Bench): readonly RuleText[] => {
  const { engine, variables } = compileFor(asked, bench);
  const answer = engine.explain({ choices: engineChoices(asked, variables) });
  const found = answer.status === 'proved' ? answer.value : answer.known;
  if (found === null || found.kind === 'consistent') return [];
  const ids = found.kind === 'conflict' ? (found.conflicts[0]?.constraints ?? []) : found.constraints;
  return [...new Set(ids.map(ruleIdOf))].flatMap((id) =>
    bench.rules
      .filter((rule) => rule.id === id)
      .map((rule) => ({ id, title: rule.title, text: `${rule.title}.` })),
  );
};

const statementOf = (statement: SystemStatement): Statement => ({
  kind: statement.kind,
  path: statement.path,
  value: statement.value ?? 'none',
  text: statement.text,
});

const vesselNames = (filled: Filled): string =>
  filled.variables
    .flatMap((variable, index) =>
      variable.slot === 'vessel' ? [optionAt(variable, filled.solution[index] ?? 0)?.name ?? ''] : [],
    )
    .join(' and ');

const difference = (filled: Filled, now: Filled | undefined): { priceDifference?: string } =>
  now === undefined || filled.cost === undefined || now.cost === undefined
    ? {}
    : { priceDifference: `${String(filled.cost - now.cost)}.00` };

const repairNumber = (
  question: Question,
  statement: Extract<SystemStatement, { kind: 'inquiry' }>,
): Change | undefined => {
  const { number, with: change } = statement;
  if (number === undefined || change === undefined) return undefined;
  const limit = furthest(reachOf(number), (si) => isPossible(change(question.system, si), question.bench));
  if (limit === undefined) return undefined;
  const to = shownLimit(limit, number);
  const bound = number.easier === 'lower' ? 'at most' : 'at least';
  const filled = cheapest(change(question.system, limit), question.bench);
  return {
    text: `${statement.text} changed to ${bound} ${to}${filled === undefined ? '' : `: ${vesselNames(filled)}`}`,
    changes: [{ path: statement.path, from: statement.value, to }],
  };
};

const repairWish = (question: Question, statement: SystemStatement): Change | undefined => {
  const filled = cheapest(statement.without(question.system), question.bench);
  if (filled === undefined) return undefined;
  if (statement.kind === 'inquiry') {
    return {
      text: `without “${statement.text}”: ${vesselNames(filled)}`,
      changes: [{ path: statement.path, from: statement.value, to: 'left open' }],
    };
  }
  const index = filled.variables.findIndex((v) => slotPath(v.slot, v.set) === statement.path);
  const variable = filled.variables[index];
  const to: Item | null = variable === undefined ? null : optionAt(variable, filled.solution[index] ?? 0);
  return {
    text: `${to?.name ?? 'none'} instead of ${statement.text}`,
    changes: [{ path: statement.path, from: statement.value ?? 'none', to: to?.id ?? 'none' }],
    ...difference(filled, undefined),
  };
};

const repairsOf = (question: Question, conflict: readonly SystemStatement[]): readonly Change[] =>
  conflict.flatMap((statement) => {
    const byNumber = statement.kind === 'inquiry' ? repairNumber(question, statement) : undefined;
    const change = byNumber ?? repairWish(question, statement);
    return change === undefined ? [] : [change];
  });

/** A special vessel with which what was said and chosen would hold; only where no choice takes part in the conflict. */
const specialFor = (
  { system, bench }: Question,
  conflict: readonly SystemStatement[],
): string | undefined => {
  if (system.specials.length > 0 || conflict.some((s) => s.kind === 'choice')) return undefined;
  for (const special of specialVesselsFor(system)) {
    const made = specialsOf({ ...system, specials: [special] }, bench.range);
    const vessel = made.ok ? made.value[0]?.item : undefined;
    if (vessel === undefined) continue;
    const asked: System = {
      ...system,
      specials: [special],
      sets: system.sets.map((set) => ({ ...set, choices: { ...set.choices, vessel: vessel.id } })),
    };
    if (isPossible(asked, benchOf(asked, bench))) return vessel.name;
  }
  return undefined;
};

const sentence = (conflict: readonly SystemStatement[]): string =>
  conflict.length === 1
    ? `“${conflict[0]?.text ?? ''}” alone leaves nothing of this range.`
    : `${conflict.map((s) => `“${s.text}”`).join(' and ')} exclude each other; without any one of them there is a way.`;

export interface ExplainOptions {
  /** At most this many conflicts. */
  readonly most?: number;
}

/**
 * The conflict behind a check that fails as the parts are chosen: among those parts alone where it can be, else among
 * them and what was said. It names what a person sees failing, where another minimal conflict would go a long way round.
 */
const conflictSeen = (
  question: Question,
  left: readonly SystemStatement[],
): readonly SystemStatement[] | undefined => {
  for (const { slots } of failingIn(question.system, question.bench)) {
    const parts = left.filter((s) => s.kind === 'choice' && slots.includes(s.path));
    const said = left.filter((s) => s.kind === 'inquiry');
    for (const among of parts.length === 0 ? [] : [parts, [...said, ...parts]]) {
      const conflict = minimalConflict(among, question.holds);
      if (conflict !== undefined && conflict.length > 0) return conflict;
    }
  }
  return undefined;
};

/** Conflicts that share no member: what is seen failing first, the statements of each set aside in turn. */
const conflictsOf = (question: Question, most: number): readonly (readonly SystemStatement[])[] => {
  const found: (readonly SystemStatement[])[] = [];
  let left = question.statements;
  while (found.length < most) {
    const conflict = conflictSeen(question, left) ?? minimalConflict(left, question.holds);
    if (conflict === undefined || conflict.length === 0) break;
    found.push(conflict);
    left = left.filter((s) => !conflict.includes(s));
  }
  return found;
};

/** Minimal conflicts among what was said and chosen, and the smallest changes that mend them. */
export const explain = (system: System, bench: Bench, options: ExplainOptions = {}): ExplainAnswer => {
  const head = { catalogueRevision: bench.range.revision, ruleRevision };
  const question = questionOf(system, bench);
  if (question.holds(question.statements))
    return { ...head, result: 'consistent', conflicts: [], repairs: [] };
  if (!question.holds([])) {
    const rules = [...constraintsBetween(allBut(system, question.statements, []), bench)];
    return {
      ...head,
      result: 'background inconsistent',
      conflicts: [{ statements: [], rules, text: 'The range and its rules admit no system at all.' }],
      repairs: [],
    };
  }
  const conflicts = conflictsOf(question, options.most ?? 3);
  const only = conflicts.length === 1 ? conflicts[0] : undefined;
  const special = only === undefined ? undefined : specialFor(question, only);
  const beyond =
    special === undefined
      ? {}
      : { special: `${special} would do, past the end of the range: to be reviewed and released.` };
  return {
    ...head,
    result: 'conflict',
    conflicts: conflicts.map((conflict) => ({
      statements: conflict.map(statementOf),
      rules: [...rulesBetween(question, conflict)],
      text: sentence(conflict),
      ...beyond,
    })),
    repairs: [...(only === undefined ? repairTogether(question, conflicts) : repairsOf(question, only))],
  };
};

/** Several independent conflicts: one statement of each has to give way; the first that works of each is tried. */
const repairTogether = (
  question: Question,
  conflicts: readonly (readonly SystemStatement[])[],
): readonly Change[] => {
  const options = conflicts.reduce<readonly (readonly SystemStatement[])[]>(
    (sets, conflict) => sets.flatMap((set) => conflict.map((member) => [...set, member])),
    [[]],
  );
  const changes: Change[] = [];
  for (const dropped of options.slice(0, 24)) {
    const relaxed = dropped.reduce((s, statement) => statement.without(s), question.system);
    const filled = cheapest(relaxed, question.bench);
    if (filled === undefined) continue;
    changes.push({
      text: `without ${dropped.map((s) => `“${s.text}”`).join(' and ')}: ${vesselNames(filled)}`,
      changes: dropped.map((s) => ({ path: s.path, from: s.value ?? 'none', to: 'left open' })),
    });
    if (changes.length >= 5) break;
  }
  return changes;
};
