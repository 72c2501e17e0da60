import {
  type Assessment,
  type Item,
  type Offer,
  parseSlotPath,
  setName,
  slots,
  type SlotPath,
  type Status,
  type System,
} from '@flangewise/model';
import { formatQuantity } from '@flangewise/quantities';
import type { DrawingModel } from '../drawings/drawing-model.js';
import { sceneSlotsOf } from '../drawings/scene-slots.js';
import { type FigureView, figuresOf, letters } from './figures.js';
import { type CheckRow, checkRowsOf, checksSentence } from './check-rows.js';
import { type EvidenceSheet, evidenceSheetsOf } from './evidence-sheets.js';
import type { InputFields } from './input-text.js';
import { moneyText } from './money-text.js';
import { dateText } from './date-text.js';
import { nozzleTablesOf, type NozzleTable } from './nozzle-tables.js';
import type { Issue, Row, TitleBlockView } from './issue.js';
import { ownCautions } from './own-cautions.js';
import { massRow, setRatingRows, utilityRows } from './rating-rows.js';
import { summarySentence } from './summary-sentence.js';
import { titleBlockView } from './title-block-view.js';

export interface PartRow {
  readonly number: number;
  readonly title: string;
  readonly name: string;
  readonly status: Status | null;
  /** Set that it belongs to; null on the frame. */
  readonly set: number | null;
}

/** A drawing with the tables beside it. */
export interface SpecificationSheetView {
  readonly title: string;
  readonly say: string | null;
  readonly figures: readonly FigureView[];
  readonly ratings: readonly Row[];
  readonly parts: readonly PartRow[];
  readonly nozzles: readonly NozzleTable[];
}

export interface ConformityView {
  readonly heading: string;
  readonly statement: string;
  readonly rows: readonly Row[];
  readonly source: string;
}

/** Everything that the technical specification shows, in words and figures that need no further reckoning. */
export interface SpecificationView {
  readonly block: TitleBlockView;
  readonly drawing: DrawingModel;
  /** First the whole, then one sheet a set where there are several. */
  readonly sheets: readonly SpecificationSheetView[];
  /** Numbers of the parts, the same on every sheet. */
  readonly numbers: ReadonlyMap<SlotPath, number>;
  /** Nozzle tables that found no room beside a drawing. */
  readonly nozzles: readonly NozzleTable[];
  /** Whether utilities and revisions stand on the first sheet. */
  readonly oneSheet: boolean;
  readonly utilities: readonly Row[];
  readonly revisions: readonly {
    readonly revision: string;
    readonly change: string;
    readonly by: string;
    readonly date: string;
    readonly price: string;
  }[];
  readonly checksSentence: string;
  readonly checks: readonly CheckRow[];
  readonly conformity: readonly ConformityView[];
  readonly openPoints: readonly { readonly question: string; readonly why: string }[];
  readonly blocking: readonly string[];
  readonly evidence: readonly EvidenceSheet[];
  readonly cautions: readonly string[];
  readonly revisionsRest: { readonly catalogue: string; readonly rules: string };
  readonly watermark: string | null;
}

export interface SpecificationInput {
  readonly system: System;
  /** Items by number, specials among them. */
  readonly items: ReadonlyMap<string, Item>;
  readonly assessment: Assessment;
  readonly offer: Offer;
  readonly drawing: DrawingModel;
  readonly issue: Issue;
  /** What the inputs in the evidence are. */
  readonly inputFields: InputFields;
  /** Rows that only the engineering libraries can give, for instance the PS of the whole; shown first. */
  readonly facts?: { readonly ratings?: readonly Row[]; readonly utilities?: readonly Row[] };
}

/** Room for a section beside the tables [mm]: higher where utilities and revisions go to another sheet. */
const places = { alone: { width: 97, height: 170 }, beside: { width: 97, height: 196 } } as const;

/** Lines of ratings, parts and nozzles that fit beside the drawing, and letters of a name that fit on one line. */
const column = { alone: 41, beside: 52, letters: 27 } as const;

const linesOf = (ratings: readonly Row[], names: readonly string[], ports: number): number =>
  ratings.length + names.reduce((sum, name) => sum + Math.ceil(name.length / column.letters), 0) + ports;

const partRows = (input: SpecificationInput, numbers: ReadonlyMap<SlotPath, number>): PartRow[] =>
  sceneSlotsOf(input.drawing, input.drawing.sets)
    .flatMap(({ path, name, status, set }): PartRow[] => {
      const [number, parsed] = [numbers.get(path), parseSlotPath(path)];
      return number === undefined || parsed === undefined || parsed.slot === 'material'
        ? []
        : [{ number, title: slots[parsed.slot].title, name, status, set }];
    })
    .toSorted((a, b) => a.number - b.number);

const sheetsOf = (
  input: SpecificationInput,
): Pick<SpecificationView, 'sheets' | 'numbers' | 'nozzles' | 'oneSheet'> => {
  const { system, items, drawing, facts } = input;
  const several = drawing.sets.length > 1;
  const names = Object.values(drawing.names).filter((name) => name !== undefined);
  const ports = drawing.sets.reduce(
    (sum, { cover }) => sum + (cover === null ? 0 : cover.ports.length + 2),
    0,
  );
  const shared = [...(facts?.ratings ?? []), massRow({ system, items })];
  const ratingsOf = (set: number): Row[] => setRatingRows(input, set);
  const first = several ? shared : [...ratingsOf(drawing.sets[0]?.index ?? 0), ...shared];
  const oneSheet = !several && linesOf(first, names, ports) <= column.alone;
  const figures = figuresOf(drawing, { first: oneSheet ? places.alone : places.beside, set: places.beside });
  const { numbers } = figures;
  const parts = partRows(input, numbers);
  const tables = nozzleTablesOf(drawing, numbers);
  const head: SpecificationSheetView = {
    title: 'Technical specification',
    say: summarySentence(system, items),
    figures: figures.first,
    ratings: first,
    parts: several ? parts.filter(({ set }) => set === null) : parts,
    nozzles: oneSheet ? tables : [],
  };
  const setSheets = !several
    ? []
    : drawing.sets.map(({ index, label }, i): SpecificationSheetView => {
        const own = parts.filter(({ set }) => set === index);
        const table = tables.filter(({ set }) => set === index);
        const rows = table.reduce((sum, one) => sum + one.rows.length + 2, 0);
        const lines = linesOf(
          ratingsOf(index),
          own.map(({ name }) => name),
          rows,
        );
        return {
          title: `Section ${letters[i] ?? 'A'}–${letters[i] ?? 'A'}, ${setName(label, index)}`,
          say: null,
          figures: figures.sets[i] ?? [],
          ratings: ratingsOf(index),
          parts: own,
          nozzles: lines <= column.beside ? table : [],
        };
      });
  const sheets = [head, ...setSheets];
  const placed = new Set(sheets.flatMap(({ nozzles }) => nozzles.map(({ set }) => set)));
  return { sheets, numbers, oneSheet, nozzles: tables.filter(({ set }) => !placed.has(set)) };
};

/** The same sentence once, with how often it was said. */
const countedSentences = (sentences: readonly string[]): string[] =>
  [...new Set(sentences)].map((sentence) => {
    const count = sentences.filter((other) => other === sentence).length;
    return count === 1 ? sentence : `${sentence}, ${String(count)} times`;
  });

const conformityViews = (assessment: Assessment, sets: number): ConformityView[] =>
  assessment.conformity.map(
    ({ set, region, category, fluidGroup, statement, testPressurePaGauge, modules, source }) => ({
      heading: sets > 1 ? `Conformity, ${region}, set ${String(set + 1)}` : `Conformity, ${region}`,
      statement,
      rows: [
        { label: 'Category', value: category },
        ...(fluidGroup === undefined ? [] : [{ label: 'Fluid group', value: String(fluidGroup) }]),
        ...(modules.length === 0 ? [] : [{ label: 'Modules', value: modules.join(', ') }]),
        ...(testPressurePaGauge === undefined
          ? []
          : [
              {
                label: 'Test pressure',
                value: formatQuantity(testPressurePaGauge, 'pressure', { rounding: 'up' }),
              },
            ]),
      ],
      source: source
        .map(({ citation, basis }) => (basis === 'published' ? citation : `${citation} (${basis})`))
        .join('; '),
    }),
  );

const revisionRows = ({ issue, offer }: SpecificationInput): SpecificationView['revisions'] => {
  const given = issue.revisions ?? [
    {
      revision: offer.revision,
      change: 'This issue',
      by: issue.author ?? '',
      date: offer.date ?? issue.date ?? '',
    },
  ];
  return given.map(({ revision, change, by, date, price }) => ({
    revision,
    change,
    by,
    date: dateText(date),
    price: price === undefined ? '' : moneyText(price, offer.currency),
  }));
};

/** The specification of one revision of an offer. Nothing is reckoned here that decides anything. */
export const specificationViewOf = (input: SpecificationInput): SpecificationView => {
  const { system, items, assessment, offer, drawing, issue, facts } = input;
  const sheets = sheetsOf(input);
  return {
    block: titleBlockView({ system, offer, issue, blocking: assessment.blocking }),
    drawing,
    ...sheets,
    utilities: [...(facts?.utilities ?? []), ...utilityRows({ system, items })],
    revisions: revisionRows(input),
    checksSentence: checksSentence(assessment.results),
    checks: checkRowsOf(assessment.results, {
      numbers: sheets.numbers,
      setName: (set) => (system.sets.length < 2 ? null : setName(system.sets[set]?.label, set)),
    }),
    conformity: conformityViews(assessment, system.sets.length),
    openPoints: assessment.openPoints.map(({ question, why }) => ({ question, why })),
    blocking: countedSentences(assessment.blocking),
    evidence: evidenceSheetsOf(assessment.results, input.inputFields),
    cautions: ownCautions(assessment.cautions),
    revisionsRest: { catalogue: assessment.catalogueRevision, rules: assessment.ruleRevision },
    watermark: offer.watermark ?? null,
  };
};
