import { checkCountText } from '@flangewise/documents/drawings';
import type { Assessment, RuleResult } from '@flangewise/model';
import { sourceText, stepLines } from './evidence-text.js';
import { openPointsSection } from './open-points.js';
import { page, points, section } from './section.js';
import { marginText, usedText } from './status-text.js';
import { table } from './table.js';
import { hanging } from './wrap.js';

export interface CheckTextInput {
  readonly title: string;
  readonly assessment: Assessment;
  readonly several: boolean;
  readonly withEvidence: boolean;
}

const isPlain = ({ status }: RuleResult): boolean => status === 'met';

/** The set of a result, counted from 1 as people do; empty where there is only one. */
const setText = ({ set }: RuleResult, several: boolean): string =>
  several && set !== undefined ? String(set + 1) : '';

/** Results that read alike but for their slots, as one. */
const folded = (results: readonly RuleResult[]): readonly RuleResult[] => {
  const byReading = new Map<string, RuleResult>();
  for (const result of results) {
    const { status, rule, set, shown } = result;
    const reading = JSON.stringify([status, rule, set, shown]);
    const before = byReading.get(reading);
    byReading.set(
      reading,
      before === undefined ? result : { ...before, slots: [...before.slots, ...result.slots] },
    );
  }
  return [...byReading.values()];
};

const checkRow = (result: RuleResult, several: boolean): readonly string[] => [
  result.status,
  ...(several ? [setText(result, several)] : []),
  usedText(result.utilisation),
  result.title,
  result.shown ?? (isPlain(result) ? '' : result.slots.join(', ')),
];

const talking = (results: readonly RuleResult[], several: boolean, columns: number): string =>
  points(
    results
      .filter((r) => !isPlain(r) && r.kind === 'hard')
      .map(
        (r) => `${r.status}${several && r.set !== undefined ? `, set ${String(r.set + 1)}` : ''}: ${r.text}`,
      ),
    columns,
  );

const headline = ({ assessment }: CheckTextInput): string => {
  const { status, results, leastMargin, releasable } = assessment;
  const release = releasable ? 'can be released' : 'cannot be released yet';
  return `${status.charAt(0).toUpperCase()}${status.slice(1)}; ${checkCountText(results)}; ${marginText(leastMargin)}; ${release}.`;
};

const evidenceOf = (results: readonly RuleResult[], columns: number): readonly string[] =>
  results
    .filter((r) => r.evidence.length > 0)
    .map((r) =>
      [
        `${r.title} (${r.rule})`,
        ...r.evidence.flatMap((e) => [
          `  ${e.title}`,
          stepLines(e.steps, columns, '    '),
          hanging('    source: ', e.source.map(sourceText).join('; '), columns),
        ]),
      ].join('\n'),
    );

/** The assessment of a system in words: worst first. */
export const checkText = (input: CheckTextInput, columns: number): string => {
  const { title, assessment, several, withEvidence } = input;
  const results = assessment.results;
  return page(
    [`${title}\n${hanging('', headline(input), columns)}`],
    section(
      'Checks',
      table(
        [
          { title: 'Status' },
          ...(several ? [{ title: 'Set', align: 'right' } as const] : []),
          { title: 'Used', align: 'right' },
          { title: 'Check' },
          { title: '' },
        ],
        folded(results).map((r) => checkRow(r, several)),
        columns,
      ),
    ),
    section('What they say', talking(results, several, columns)),
    section(
      'Advice',
      points(
        results
          .filter((r) => r.kind === 'advice' && !assessment.cautions.includes(r.text))
          .map((r) => r.text),
        columns,
      ),
    ),
    openPointsSection(assessment.openPoints, columns),
    section(
      'Conformity',
      points(
        assessment.conformity.map((c) => c.statement),
        columns,
      ),
    ),
    section(
      'Not chosen yet',
      assessment.undecided.length === 0 ? '' : hanging('  ', assessment.undecided.join(', '), columns),
    ),
    section('Keeps it from being released', points([...new Set(assessment.blocking)], columns)),
    section('Cautions', points(assessment.cautions, columns)),
    withEvidence ? evidenceOf(results, columns) : [],
    [`Catalogue ${assessment.catalogueRevision}, rules ${assessment.ruleRevision}`],
  );
};
