import {
  type Assessment,
  type Item,
  type Offer,
  parseSlotPath,
  type SlotPath,
  type Status,
  type System,
} from '@flangewise/model';
import { formatQuantity } from '@flangewise/quantities';
import type { DrawingModel } from '../drawings/drawing-model.js';
import { sceneSlotsOf } from '../drawings/scene-slots.js';
import { type Figures, figuresOf } from './figures.js';
import { type CheckRow, checkRowsOf, checksSentence } from './check-rows.js';
import { type EvidenceSheet, evidenceSheetsOf } from './evidence-sheets.js';
import { moneyText } from './money-text.js';
import { dateText } from './date-text.js';
import { nozzleTablesOf, type NozzleTable } from './nozzle-tables.js';
import type { Issue, Row, TitleBlockView } from './issue.js';
import { ratingRows, utilityRows } from './rating-rows.js';
import { summarySentence } from './summary-sentence.js';
import { titleBlockView } from './title-block-view.js';

export interface PartRow {
  readonly number: number;
  readonly title: string;
  readonly name: string;
  readonly status: Status | null;
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
  readonly summary: string;
  readonly drawing: DrawingModel;
  readonly figures: Figures;
  /** Whether everything of the specification fits on one sheet. */
  readonly oneSheet: boolean;
  /** Numbers of the parts, the same on every sheet. */
  readonly numbers: ReadonlyMap<SlotPath, number>;
  readonly ratings: readonly Row[];
  readonly parts: readonly PartRow[];
  readonly nozzles: readonly NozzleTable[];
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
  /** Rows that only the engineering libraries can give, for instance the PS of the whole; shown first. */
  readonly facts?: { readonly ratings?: readonly Row[]; readonly utilities?: readonly Row[] };
}

/** Room for the section on the first sheet [mm]: higher where nozzles, utilities and revisions go to the next. */
const figurePlaces = { alone: { width: 97, height: 172 }, first: { width: 97, height: 196 } } as const;

/** Lines of ratings, parts and nozzles that fit beside the drawing, and letters of a name that fit on one line. */
const column = { lines: 41, letters: 27 } as const;

const fitsBeside = (drawing: DrawingModel, ratings: readonly Row[]): boolean => {
  const names = Object.values(drawing.names);
  const parts = names.reduce((sum, name) => sum + Math.ceil((name?.length ?? 0) / column.letters), 0);
  const ports = drawing.sets.reduce(
    (sum, { cover }) => sum + (cover === null ? 0 : cover.ports.length + 2),
    0,
  );
  return ratings.length + parts + ports <= column.lines;
};

const partRows = (drawing: DrawingModel, numbers: ReadonlyMap<SlotPath, number>): PartRow[] =>
  sceneSlotsOf(drawing, drawing.sets)
    .flatMap(({ path, title, name, status }): PartRow[] => {
      const number = numbers.get(path);
      return number === undefined || parseSlotPath(path)?.slot === 'material'
        ? []
        : [{ number, title, name, status }];
    })
    .toSorted((a, b) => a.number - b.number);

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
      by: issue.author ?? '–',
      date: offer.date ?? issue.date ?? '',
    },
  ];
  return given.map(({ revision, change, by, date, price }) => ({
    revision,
    change,
    by,
    date: dateText(date),
    price: price === undefined ? '' : moneyText(price, offer.currency, /(^\d+$)|(\.00$)/.test(price)),
  }));
};

/** The specification of one revision of an offer. Nothing is reckoned here that decides anything. */
export const specificationViewOf = (input: SpecificationInput): SpecificationView => {
  const { system, items, assessment, offer, drawing, issue, facts } = input;
  const ratings = [...(facts?.ratings ?? []), ...ratingRows({ system, items, assessment })];
  const place = figurePlaces[fitsBeside(drawing, ratings) ? 'alone' : 'first'];
  const figures = figuresOf(drawing, place);
  const { numbers } = figures;
  return {
    block: titleBlockView({ system, offer, issue, blocking: assessment.blocking }),
    summary: summarySentence(system, items),
    drawing,
    figures,
    oneSheet: place === figurePlaces.alone,
    numbers,
    ratings,
    parts: partRows(drawing, numbers),
    nozzles: nozzleTablesOf(drawing, numbers),
    utilities: [...(facts?.utilities ?? []), ...utilityRows({ system, items })],
    revisions: revisionRows(input),
    checksSentence: checksSentence(assessment.results),
    checks: checkRowsOf(assessment.results, numbers),
    conformity: conformityViews(assessment, system.sets.length),
    openPoints: assessment.openPoints.map(({ question, why }) => ({ question, why })),
    blocking: countedSentences(assessment.blocking),
    evidence: evidenceSheetsOf(assessment.results),
    cautions: assessment.cautions,
    revisionsRest: { catalogue: assessment.catalogueRevision, rules: assessment.ruleRevision },
    watermark: offer.watermark ?? null,
  };
};
