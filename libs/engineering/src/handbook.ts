import { type SourceReference, usualCaution } from '@flangewise/model';
import { type Calculation, evaluateWithEvidence } from './calculation.js';
import { type FieldLine, fieldTable } from './field-table.js';
import type { Sample } from './reference-cases.js';
import { shown } from './shown.js';
import { findSource } from './sources.js';

/** A check case as a handbook page shows it. */
export interface HandbookCase {
  readonly id: string;
  readonly calculation: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly relativeTolerance: number;
  readonly source: string;
  readonly basis: string;
}

const caution = usualCaution('A result');

/** A cell of a Markdown table: no pipe and no line break may end it. */
const cell = (text: string): string => text.replaceAll('|', String.raw`\|`).replaceAll('\n', ' ');

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

const fieldRows = (lines: readonly FieldLine[]): string[][] =>
  lines.map(({ field, symbol, unit, values, required, description }) => [
    `\`${field}\``,
    symbol ?? '',
    unit ?? '',
    values,
    required ? 'yes' : 'no',
    description ?? '',
  ]);

const sourceLine = ({ citation, basis }: SourceReference): string => {
  const found = findSource(citation);
  const full =
    found === undefined ? '' : ` — ${found.citation}${found.note === undefined ? '' : ` (${found.note})`}`;
  return `- ${citation}${full}; ${basis === 'from memory, unverified' ? `**${basis}**` : basis}`;
};

type Replacer = (key: string, value: unknown) => unknown;

const shownRecord = (record: Readonly<Record<string, unknown>>, replacer?: Replacer): string =>
  Object.entries(record)
    .map(
      ([field, value]) => `${field} = ${typeof value === 'string' ? value : JSON.stringify(value, replacer)}`,
    )
    .join('; ');

/** Longest list that an example shows whole. */
const longest = 6;

/** Numbers as the steps show them, long lists by their ends. */
const shortened: Replacer = (_key, value) => {
  if (typeof value === 'number') return Number(shown(value));
  return Array.isArray(value) && value.length > longest
    ? [...(value as unknown[]).slice(0, 3), '…', value.at(-1)]
    : value;
};

const tolerance = (relative: number): string =>
  relative === 0 ? 'equal' : `${String(Number((relative * 100).toPrecision(6)))} %`;

const casesSection = (cases: readonly HandbookCase[]): string =>
  cases.length === 0
    ? 'None in the reference file; the calculation has tests of its own.'
    : table(
        ['Case', 'Inputs', 'Expected', 'Tolerance', 'Source', 'Basis'],
        cases.map((item) => [
          item.id,
          shownRecord(item.inputs),
          shownRecord(item.expected),
          tolerance(item.relativeTolerance),
          item.source,
          item.basis,
        ]),
      );

const shownValue = (value: number | string): string => (typeof value === 'number' ? shown(value) : value);

/** The steps of one sample, as the evidence sheet shows them. */
const exampleSection = (subject: Calculation, sample: Sample | undefined): string => {
  const evidence = sample && evaluateWithEvidence(subject, sample.inputs);
  if (!evidence?.ok) return 'None.';
  const { inputs, outputs, steps } = evidence.value;
  return [
    `Given: ${shownRecord(inputs)}`,
    table(
      ['Symbol', 'Formula', 'Numbers put in', 'Value', 'Unit', 'Note'],
      steps.map(({ symbol, formula, substituted, value, unit, note }) => [
        symbol,
        formula,
        substituted,
        shownValue(value),
        unit,
        note ?? '',
      ]),
    ),
    `Result: ${shownRecord(outputs, shortened)}`,
  ].join('\n\n');
};

const isRemembered = ({ source }: Calculation): boolean =>
  source.some(({ basis }) => basis === 'from memory, unverified');

/**
 * The handbook page of one calculation in Markdown, the formula in TeX.
 *
 * @param cases   those of other calculations are left out
 * @param samples the first of this calculation is worked through
 */
export const handbookPage = (
  subject: Calculation,
  cases: readonly HandbookCase[],
  samples: readonly Sample[] = [],
): string => {
  return [
    `# ${subject.title}`,
    `\`${subject.id}\``,
    ...(isRemembered(subject)
      ? ['> Part of this rests on values from memory, unverified. Check them before a result is relied on.']
      : []),
    '## Method',
    `$$\n${subject.formula}\n$$`,
    `Holds for: ${subject.range}`,
    '## Inputs',
    table(
      ['Field', 'Symbol', 'Unit', 'Values', 'Required', 'Meaning'],
      fieldRows(fieldTable(subject.inputs)),
    ),
    '## Outputs',
    table(['Field', 'Symbol', 'Unit', 'Values', 'Always', 'Meaning'], fieldRows(fieldTable(subject.outputs))),
    '## Worked example',
    exampleSection(
      subject,
      [...samples, ...cases].find(({ calculation }) => calculation === subject.id),
    ),
    '## Sources',
    subject.source.map(sourceLine).join('\n'),
    '## Reference cases',
    casesSection(cases.filter(({ calculation }) => calculation === subject.id)),
    caution,
    '',
  ].join('\n\n');
};

const fileOf = ({ id }: Calculation): string =>
  `${id.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}.md`;

/** The page that leads to all others, by domain. */
const indexPage = (subjects: readonly Calculation[], cases: readonly HandbookCase[]): string => {
  const domainOf = ({ id }: Calculation): string => id.split('.')[0] ?? '';
  const domains = [...new Set(subjects.map(domainOf))].sort();
  return [
    '# Handbook of calculations',
    ...domains.flatMap((domain) => [
      `## ${domain}`,
      table(
        ['Calculation', 'Title', 'Reference cases', 'Rests on memory'],
        subjects
          .filter((subject) => domainOf(subject) === domain)
          .map((subject) => [
            `[\`${subject.id}\`](${fileOf(subject)})`,
            subject.title,
            String(cases.filter(({ calculation }) => calculation === subject.id).length),
            isRemembered(subject) ? '**yes**' : 'no',
          ]),
      ),
    ]),
    caution,
    '',
  ].join('\n\n');
};

/** Every page by the name of its file, `relief.gas-area.md` for `relief.gasArea`, and `README.md` that lists them. */
export const handbookPages = (
  subjects: readonly Calculation[],
  cases: readonly HandbookCase[],
  samples: readonly Sample[] = [],
): ReadonlyMap<string, string> =>
  new Map([
    ['README.md', indexPage(subjects, cases)],
    ...subjects.map((subject) => [fileOf(subject), handbookPage(subject, cases, samples)] as const),
  ]);
