import { type Evidence, type SourceReference, type Step, usualCaution } from '@flangewise/model';
import { formatNumber } from '@flangewise/quantities';
import { page, points, section } from './section.js';
import { table } from './table.js';
import { hanging } from './wrap.js';

/** A result to seven digits: enough to redo it by hand, short enough to be read. */
const digits = 7;

/** From here on a reader loses count of the digits. */
const groupedFrom = 10_000;

const numberText = (value: number): string =>
  Math.abs(value) >= groupedFrom && Math.abs(value) < 1e15
    ? formatNumber(value, digits)
    : String(Number(value.toPrecision(digits)));

const shown = (value: unknown): string =>
  typeof value === 'number' ? numberText(value) : typeof value === 'string' ? value : JSON.stringify(value);

const stepText = ({ symbol, formula, substituted, value, unit, note }: Step): string => {
  const result = `${shown(value)}${unit === '1' || unit === '' ? '' : ` ${unit}`}`;
  const middle = [formula, substituted].filter(
    (t, k, all) => t !== '' && t !== result && all.indexOf(t) === k,
  );
  return `${[symbol, ...middle, result].join(' = ')}${note === undefined ? '' : `  (${note})`}`;
};

export const sourceText = ({ citation, basis }: SourceReference): string =>
  basis === 'published' ? citation : `${citation} (${basis})`;

/** Steps of a calculation as a reader redoes them, one a line. */
export const stepLines = (steps: readonly Step[], columns: number, indent = '  '): string =>
  steps.map((step) => hanging(indent, stepText(step), columns)).join('\n');

/** One calculation in words: results, steps, range, source. */
export const evidenceText = (evidence: Evidence, columns: number): string => {
  const results = Object.entries(evidence.outputs).map(([field, value]) => [field, shown(value)]);
  return page(
    [`${evidence.title} (${evidence.calculation})`],
    section('Result', table([{ title: '' }, { title: '' }], results, columns)),
    section('Steps', stepLines(evidence.steps, columns)),
    section('Range', hanging('  ', evidence.range, columns)),
    section('Source', points(evidence.source.map(sourceText), columns)),
    [hanging('', usualCaution('This'), columns)],
  );
};
