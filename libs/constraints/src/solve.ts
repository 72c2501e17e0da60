import {
  type Assessment,
  type CandidateInput,
  type InquiryInput,
  type Item,
  type ItemOf,
  type OpenPoint,
  readDocument,
  type SolveAnswer,
  type System,
  type SystemInput,
  systemSchema,
} from '@flangewise/model';
import type { Solution } from '@flangewise/solver';
import { assess } from './assess.js';
import { type Bench, compileFor } from './bench.js';
import { fillSystem, optionAt } from './choices.js';
import { refusalsOf } from './refusals.js';
import { ruleRevision } from './rule-revision.js';
import type { SlotVariable } from './variable.js';

/** What makes two systems different enough to be shown side by side. */
const tellingSlots = ['vessel', 'closure', 'circulator'] as const;

export interface SolveOptions {
  /** At most this many candidates. */
  readonly most?: number;
  readonly signal?: { readonly aborted: boolean };
}

/** A system without choices: as many sets as the inquiry has. */
export const openSystem = (inquiry: InquiryInput): SystemInput => ({
  inquiry,
  frame: {},
  sets: (inquiry.sets ?? [{}]).map((set) => ({
    ...(set.label === undefined ? {} : { label: set.label }),
    count: set.count ?? 1,
    choices: {},
  })),
});

const parsed = (document: SystemInput): System => {
  const outcome = readDocument(systemSchema, document);
  if (!outcome.ok)
    throw new Error(`a system made here does not fit its schema: ${JSON.stringify(outcome.error)}`);
  return outcome.value;
};

const itemsOf = (variables: readonly SlotVariable[], solution: Int32Array): readonly Item[] =>
  variables.flatMap((variable, index) => {
    const item = optionAt(variable, solution[index] ?? 0);
    return item === null ? [] : [item];
  });

const vesselsOf = (items: readonly Item[]): readonly ItemOf<'vessel'>[] =>
  items.filter((item) => item.slot === 'vessel');

const titleOf = (items: readonly Item[]): string => {
  const vessels = vesselsOf(items).map((v) => `${v.family} ${String(v.nominalVolumeL)} L, ${v.material}`);
  const closure = items.find((item) => item.slot === 'closure');
  return `${vessels.join(' and ')}${closure === undefined ? '' : `, ${closure.kind === 'bolted' ? 'bolted' : `quick-acting ${closure.kind}`}`}`;
};

interface Ranked {
  readonly solution: Solution;
  readonly items: readonly Item[];
  readonly document: SystemInput;
  readonly assessment: Assessment;
  readonly days: number;
}

const superlative = (all: readonly Ranked[], one: Ranked): string => {
  const others = all.filter((r) => r !== one);
  const margin = (r: Ranked): number => r.assessment.leastMargin?.value ?? Number.NEGATIVE_INFINITY;
  if (others.every((r) => r.solution.cost >= one.solution.cost)) return 'Cheapest of those that fit.';
  if (others.every((r) => r.days > one.days)) return 'Soonest.';
  if (others.every((r) => margin(r) < margin(one))) return 'Largest least margin of all.';
  const closure = one.items.find((item) => item.slot === 'closure');
  if (closure?.kind !== 'bolted' && closure !== undefined)
    return `Opened in ${String(Math.ceil(closure.openingTimeS / 60))} min.`;
  const circulator = one.items.find((item) => item.slot === 'circulator');
  if (circulator !== undefined) return 'Even temperature by jacket and circulator.';
  const vessel = vesselsOf(one.items)[0];
  return vessel === undefined ? 'Another way.' : `${String(vessel.nominalVolumeL)} L in ${vessel.material}.`;
};

const undecidable = (r: Ranked): number =>
  r.assessment.results.filter((x) => x.kind === 'hard' && x.status === 'not decidable').length;

const specials = (r: Ranked): number =>
  r.assessment.results.filter((x) => x.status === 'outside standard range').length;

const names = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

const candidateOf = (
  r: Ranked,
  place: { index: number; all: readonly Ranked[]; priced: boolean },
): CandidateInput => ({
  name: names[place.index] ?? String(place.index + 1),
  title: titleOf(r.items),
  reason: superlative(place.all, r),
  system: { ...r.document, name: names[place.index] ?? 'A' },
  status: r.assessment.status,
  ...(place.priced ? { price: `${String(r.solution.cost)}.00` } : {}),
  deliveryWeeks: Math.ceil(r.days / 5),
  leastMargin: r.assessment.leastMargin,
  special: specials(r) > 0,
});

const openPoints = (ranked: readonly Ranked[], empty: System, bench: Bench): readonly OpenPoint[] =>
  ranked[0]?.assessment.openPoints ?? assess(empty, bench).openPoints;

/** Nodes after which counting gives up; the count is then left out. */
const countBudget = 20_000;

/**
 * Systems that answer an inquiry, ranked: what can be decided and is standard first, then by list price.
 * The first is the cheapest whole, with proof unless the engine was stopped.
 */
export const solve = (inquiry: InquiryInput, bench: Bench, options: SolveOptions = {}): SolveAnswer => {
  const document = openSystem(inquiry);
  const empty = parsed(document);
  const { engine, variables } = compileFor(empty, bench);
  const differIn = variables.flatMap((v, k) =>
    (tellingSlots as readonly string[]).includes(v.slot) ? [k] : [],
  );
  const answer = engine.alternatives({
    k: options.most ?? 8,
    differIn,
    objective: { kind: 'cost' },
    ...(options.signal === undefined ? {} : { signal: options.signal }),
  });
  const found = answer.status === 'proved' ? answer.value : answer.known;
  const solutions = found === null || found === 'impossible' ? [] : found;
  const ranked = solutions.map((solution): Ranked => {
    const filled = fillSystem(document, variables, solution.solution);
    const items = itemsOf(variables, solution.solution);
    return {
      solution,
      items,
      document: filled,
      assessment: assess(parsed(filled), bench),
      days: bench.range.deliveryDays(items),
    };
  });
  const sorted = [...ranked].sort(
    (a, b) =>
      specials(a) - specials(b) || undecidable(a) - undecidable(b) || a.solution.cost - b.solution.cost,
  );
  const count = solutions.length === 0 ? undefined : engine.count({ budget: { nodes: countBudget } });
  return {
    catalogueRevision: bench.range.revision,
    ruleRevision,
    result: solutions.length > 0 ? 'systems found' : found === 'impossible' ? 'impossible' : 'not proved',
    candidates: sorted.map((r, index) =>
      candidateOf(r, { index, all: sorted, priced: bench.range.prices !== undefined }),
    ),
    count: count?.status === 'proved' ? String(count.value) : solutions.length === 0 ? '0' : null,
    cheapestProved: answer.status === 'proved',
    refusals: [...refusalsOf(empty, bench)],
    openPoints: [...openPoints(sorted, empty, bench)],
    cautions: [...(sorted[0]?.assessment ?? assess(empty, bench)).cautions],
  };
};
