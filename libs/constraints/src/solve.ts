import {
  type Assessment,
  type CandidateInput,
  type InquiryInput,
  type Item,
  type ItemOf,
  type OpenPoint,
  readDocument,
  type SlotName,
  type SolveAnswer,
  type System,
  type SystemInput,
  systemSchema,
} from '@flangewise/model';
import type { Solution } from '@flangewise/solver';
import { assess } from './assess.js';
import { type Compared, reasonOf } from './candidate-reason.js';
import { type Bench, compileFor } from './bench.js';
import { fillSystem, optionAt } from './choices.js';
import { conditionsOf } from './conditions-of.js';
import { findingsOf } from './findings.js';
import { materialFindings } from './material-findings.js';
import { materialVerdicts } from './material-verdicts.js';
import { refusalsOf } from './refusals.js';
import { specialDocuments } from './special-candidates.js';
import { benchOf, specialsOf } from './special-vessel.js';
import { ruleRevision } from './rule-revision.js';
import type { SlotVariable } from './variable.js';

/** What makes two systems different enough to be shown side by side. */
const tellingSlots: readonly SlotName[] = ['vessel', 'closure'];

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

/** What a system is called after its vessels and closure. */
export const titleOf = (items: readonly Item[]): string => {
  const vessels = vesselsOf(items).map((v) => `${v.family} ${String(v.nominalVolumeL)} L, ${v.material}`);
  const closure = items.find((item) => item.slot === 'closure');
  return `${vessels.join(' and ')}${closure === undefined ? '' : `, ${closure.kind === 'bolted' ? 'bolted' : `quick-acting ${closure.kind}`}`}`;
};

/** What a person reads of a system: its vessels, and how they are closed. */
const readingOf = (items: readonly Item[]): string =>
  items
    .flatMap((item) => (item.slot === 'vessel' ? [item.id] : item.slot === 'closure' ? [item.kind] : []))
    .join(' ');

/** Lets the first of each key pass. */
const firstOf = <T>(keyOf: (one: T) => string): ((one: T) => boolean) => {
  const seen = new Set<string>();
  return (one) => {
    const key = keyOf(one);
    const isNew = !seen.has(key);
    seen.add(key);
    return isNew;
  };
};

interface Ranked {
  readonly solution: Solution;
  readonly items: readonly Item[];
  readonly document: SystemInput;
  readonly assessment: Assessment;
  readonly days: number;
  /** How a special differs from the range. */
  readonly deviations: readonly string[];
}

const comparedOf = (r: Ranked): Compared => ({
  items: r.items,
  cost: r.solution.cost,
  days: r.days,
  leastMargin: r.assessment.leastMargin?.value ?? Number.NEGATIVE_INFINITY,
});

const specials = (r: Ranked): number =>
  r.assessment.results.filter((x) => x.status === 'outside standard range').length;

const names = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

const candidateOf = (
  r: Ranked,
  place: { index: number; reason: string; priced: boolean },
): CandidateInput => ({
  name: names[place.index] ?? String(place.index + 1),
  title: titleOf(r.items),
  reason: place.reason,
  system: { ...r.document, name: names[place.index] ?? 'A' },
  status: r.assessment.status,
  ...(place.priced ? { price: `${String(r.solution.cost)}.00` } : {}),
  deliveryWeeks: Math.ceil(r.days / 5),
  leastMargin: r.assessment.leastMargin,
  special: specials(r) > 0,
  notes: [
    ...r.assessment.results.filter((x) => x.kind === 'advice').map((x) => x.text),
    ...r.assessment.conformity.map((c) => c.statement),
    ...r.deviations,
  ],
});

const openPoints = (ranked: readonly Ranked[], empty: System, bench: Bench): readonly OpenPoint[] =>
  ranked[0]?.assessment.openPoints ?? assess(empty, bench).openPoints;

/** Where no system is found, cautions that only the process and any frame call for are still said. */
const onFrame = (system: System, bench: Bench): System => {
  const frame = [...bench.range.items.values()].find((item) => item.slot === 'frame');
  return frame === undefined ? system : { ...system, frame: { frame: frame.id } };
};

/** Nodes after which counting gives up: each may take tenths of a second; the count is then left out. */
const countBudget = 3;

interface Search {
  readonly bench: Bench;
  readonly document: SystemInput;
  readonly options: SolveOptions;
}

type Found = { readonly ranked: readonly Ranked[]; readonly impossible: boolean; readonly proved: boolean };

const search = ({ bench, document, options }: Search): Found => {
  const empty = parsed(document);
  const own = benchOf(empty, bench);
  const { engine, variables } = compileFor(empty, own);
  const made = specialsOf(empty, bench.range);
  const vessels = made.ok ? made.value : [];
  const choices = vessels.flatMap(({ item }) =>
    variables.flatMap(({ options: offered }, variable) => {
      const value = offered.findIndex((o) => o?.id === item.id);
      return value < 0 ? [] : [{ variable, value }];
    }),
  );
  const most = options.most ?? 8;
  const answer = engine.alternatives({
    // Closures of one kind tell no systems apart: of those the cheapest is kept.
    k: most === 1 ? 1 : 2 * most,
    differIn: variables.flatMap((v, k) => (tellingSlots.includes(v.slot) ? [k] : [])),
    objective: { kind: 'cost' },
    choices,
    ...(options.signal === undefined ? {} : { signal: options.signal }),
  });
  const found = answer.status === 'proved' ? answer.value : answer.known;
  const solutions = found === null || found === 'impossible' ? [] : found;
  const told = solutions.filter(firstOf(({ solution }) => readingOf(itemsOf(variables, solution))));
  const ranked = told.slice(0, most).map((solution): Ranked => {
    const filled = fillSystem(document, variables, solution.solution);
    const items = itemsOf(variables, solution.solution);
    return {
      solution,
      items,
      document: filled,
      assessment: assess(parsed(filled), own),
      days: bench.range.deliveryDays(items),
      deviations: vessels.flatMap((v) => v.deviations),
    };
  });
  return { ranked, impossible: found === 'impossible', proved: answer.status === 'proved' };
};

const withSpecialVessel = (standard: Search, empty: System): Found => {
  const found = specialDocuments(standard.document, empty).map((document) =>
    search({ ...standard, document, options: { ...standard.options, most: 1 } }),
  );
  return {
    ranked: found.flatMap((one) => one.ranked),
    impossible: found.every((one) => one.impossible),
    proved: found.every((one) => one.proved),
  };
};

const countOf = (empty: System, bench: Bench): string | null => {
  const count = compileFor(empty, bench).engine.count({ budget: { nodes: countBudget } });
  return count.status === 'proved' ? String(count.value) : null;
};

/**
 * Systems that answer an inquiry, ranked: standard ones first, then by list price (where it is known), then by delivery; what is not decidable is said of each.
 * The first is the cheapest whole, with proof unless the engine was stopped. Where the range has none, special
 * vessels are tried.
 */
export const solve = (inquiry: InquiryInput, bench: Bench, options: SolveOptions = {}): SolveAnswer => {
  const document = openSystem(inquiry);
  const empty = parsed(document);
  const conditions = empty.sets.map((_, set) => conditionsOf(empty, set));
  const standard = search({ bench, document, options });
  const found = standard.impossible ? withSpecialVessel({ bench, document, options }, empty) : standard;
  const sorted = [...found.ranked].sort(
    (a, b) => specials(a) - specials(b) || a.solution.cost - b.solution.cost || a.days - b.days,
  );
  const compared = sorted.map(comparedOf);
  return {
    catalogueRevision: bench.range.revision,
    ruleRevision,
    result: sorted.length > 0 ? 'systems found' : found.impossible ? 'impossible' : 'not proved',
    candidates: sorted.map((r, index) =>
      candidateOf(r, {
        index,
        reason: reasonOf(compared, compared[index] ?? comparedOf(r)),
        priced: bench.range.prices !== undefined,
      }),
    ),
    count: standard.impossible ? '0' : countOf(empty, bench),
    cheapestProved: found.proved,
    refusals: [...refusalsOf(empty, bench)],
    findings: [...findingsOf(empty, conditions), ...materialFindings(empty, conditions, bench.range)],
    materials: [...materialVerdicts(empty, conditions, bench.range)],
    openPoints: [...openPoints(sorted, empty, bench)],
    cautions: [...(sorted[0]?.assessment ?? assess(onFrame(empty, bench), bench)).cautions],
  };
};
