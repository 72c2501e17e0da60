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
import { numberSlots, placeAnchors } from '../drawings/place-anchors.js';
import type { Scene } from '../drawings/scene.js';
import { sectionForPaper } from '../drawings/iso-scale.js';
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
  /** The section at its scale `1 : denominator`; null while no vessel is chosen. */
  readonly section: { readonly scene: Scene; readonly denominator: number } | null;
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

/** Room for the section on the first sheet [mm]. */
export const figurePlace = { width: 97, height: 172 } as const;

const numbersOf = (scene: Scene | undefined): ReadonlyMap<SlotPath, number> =>
  scene === undefined ? new Map() : numberSlots(scene, placeAnchors(scene));

const partRows = (scene: Scene | undefined, numbers: ReadonlyMap<SlotPath, number>): PartRow[] =>
  (scene?.slots ?? [])
    .flatMap(({ path, title, name, status }): PartRow[] => {
      const number = numbers.get(path);
      return number === undefined || parseSlotPath(path)?.slot === 'material'
        ? []
        : [{ number, title, name, status }];
    })
    .toSorted((a, b) => a.number - b.number);

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
  const section = sectionForPaper(drawing, figurePlace);
  const scene = section?.scene;
  const numbers = numbersOf(scene);
  return {
    block: titleBlockView({ system, offer, issue, blocking: assessment.blocking }),
    summary: summarySentence(system, items),
    drawing,
    section,
    numbers,
    ratings: [...(facts?.ratings ?? []), ...ratingRows({ system, items, assessment })],
    parts: partRows(scene, numbers),
    nozzles: nozzleTablesOf(drawing, numbers),
    utilities: [...(facts?.utilities ?? []), ...utilityRows({ system, items })],
    revisions: revisionRows(input),
    checksSentence: checksSentence(assessment.results),
    checks: checkRowsOf(assessment.results, numbers),
    conformity: conformityViews(assessment, system.sets.length),
    openPoints: assessment.openPoints.map(({ question, why }) => ({ question, why })),
    blocking: assessment.blocking,
    evidence: evidenceSheetsOf(assessment.results),
    cautions: assessment.cautions,
    revisionsRest: { catalogue: assessment.catalogueRevision, rules: assessment.ruleRevision },
    watermark: offer.watermark ?? null,
  };
};
