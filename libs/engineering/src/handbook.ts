import type { SourceReference } from '@flangewise/model';
import type { Calculation } from './calculation.js';
import { type FieldLine, fieldTable } from './field-table.js';
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

const caution =
  'A result supports, and does not replace, the work of a qualified pressure-equipment engineer, the notified body and local rules.';

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

const shownRecord = (record: Readonly<Record<string, unknown>>): string =>
  Object.entries(record)
    .map(([field, value]) => `${field} = ${typeof value === 'string' ? value : JSON.stringify(value)}`)
    .join('; ');

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

/** The handbook page of one calculation in Markdown, the formula in TeX. `cases` of other calculations are left out. */
export const handbookPage = (subject: Calculation, cases: readonly HandbookCase[]): string => {
  const remembered = subject.source.some(({ basis }) => basis === 'from memory, unverified');
  return [
    `# ${subject.title}`,
    `\`${subject.id}\``,
    ...(remembered
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
    '## Sources',
    subject.source.map(sourceLine).join('\n'),
    '## Reference cases',
    casesSection(cases.filter(({ calculation }) => calculation === subject.id)),
    caution,
    '',
  ].join('\n\n');
};

/** Every page by the name of its file, `relief.gas-area.md` for `relief.gasArea`. */
export const handbookPages = (
  subjects: readonly Calculation[],
  cases: readonly HandbookCase[],
): ReadonlyMap<string, string> =>
  new Map(
    subjects.map((subject) => [
      `${subject.id.replace(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`)}.md`,
      handbookPage(subject, cases),
    ]),
  );
