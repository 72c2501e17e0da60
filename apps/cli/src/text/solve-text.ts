import type { MaterialVerdict, Refusal, SolveAnswer } from '@flangewise/model';
import { formatCount } from '@flangewise/quantities';
import { openPointsSection } from './open-points.js';
import { page, points, section } from './section.js';
import { counted, marginText, moneyText } from './status-text.js';
import { type Column, table } from './table.js';
import { hanging } from './wrap.js';

export interface SolveTextInput {
  readonly title: string;
  readonly answer: SolveAnswer;
  /** Of the prices; absent where there are none. */
  readonly currency: string | undefined;
}

type Shown = SolveAnswer['candidates'][number];

const candidateColumns = (currency: string | undefined): readonly Column[] => [
  { title: '' },
  { title: 'Status' },
  ...(currency === undefined ? [] : [{ title: `List ${currency}`, align: 'right' } as const]),
  { title: 'Weeks', align: 'right' },
  { title: 'System' },
];

const candidateRow = (candidate: Shown, currency: string | undefined): readonly string[] => [
  candidate.name,
  candidate.status,
  ...(currency === undefined ? [] : [moneyText(candidate.price ?? '')]),
  String(candidate.deliveryWeeks),
  candidate.special === true ? `${candidate.title} (special)` : candidate.title,
];

const resultSentence = ({ result, candidates, count, cheapestProved }: SolveTextInput['answer']): string => {
  switch (result) {
    case 'systems found':
      return `${counted(candidates.length, 'system')} ${candidates.length === 1 ? 'fits' : 'fit'}, standard ones first, then by price${cheapestProved ? '; none in the range is cheaper' : '; the search was stopped, cheaper ones may exist'}${count === null || count === '0' ? '' : `; ${formatCount(count)} combinations of parts in all`}.`;
    case 'impossible':
      return 'Nothing in the range fits, and no special vessel does: "explain" names the conflict and what would mend it.';
    case 'not proved':
      return 'The search was stopped before it found a system or proved that there is none.';
  }
};

const reasons = (candidates: readonly Shown[], columns: number): string =>
  candidates
    .map(({ name, reason, leastMargin }) =>
      hanging(`  ${name}  `, `${reason} ${marginText(leastMargin)}.`, columns),
    )
    .join('\n');

/** What is told of a candidate; what is a caution stands among the cautions. */
const notesOf = ({ name, notes = [] }: Shown, cautions: readonly string[], columns: number) =>
  section(
    `About ${name}`,
    points(
      notes.filter((note) => !cautions.includes(note)),
      columns,
    ),
  );

const refusalText = ({ what, reason, frees }: Refusal): string =>
  `${what}: ${reason}${frees === undefined ? '' : ` ${frees}`}`;

const materialRows = (materials: readonly MaterialVerdict[]): readonly (readonly string[])[] =>
  materials.map(({ material, status, text }) => [
    material,
    status,
    status === 'met' ? '' : text.replaceAll(`${material} in `, 'In '),
  ]);

/** The answer of solve in words. */
export const solveText = ({ title, answer, currency }: SolveTextInput, columns: number): string => {
  const candidates = answer.candidates;
  const [first] = candidates;
  return page(
    [`${title}\n${hanging('', resultSentence(answer), columns)}`],
    section(
      'Systems',
      candidates.length === 0
        ? ''
        : table(
            candidateColumns(currency),
            candidates.map((c) => candidateRow(c, currency)),
            columns,
          ),
    ),
    section('What tells them apart', reasons(candidates, columns)),
    first === undefined ? [] : notesOf(first, answer.cautions, columns),
    section('What follows from the inquiry', points(answer.findings, columns)),
    openPointsSection(answer.openPoints, columns),
    section(
      'Materials against the media',
      answer.materials.length === 0
        ? ''
        : table([{ title: '' }, { title: '' }, { title: '' }], materialRows(answer.materials), columns),
    ),
    section('Left out', points(answer.refusals.map(refusalText), columns)),
    section('Cautions', points(answer.cautions, columns)),
    [`Catalogue ${answer.catalogueRevision}, rules ${answer.ruleRevision}`],
  );
};
