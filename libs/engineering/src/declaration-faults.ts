import type { Calculation } from './calculation.js';
import { type FieldLine, fieldTable } from './field-table.js';
import { findSource } from './sources.js';

/** UCUM codes of the units in use: products, quotients and powers of these. */
const unitAtoms = new Set('1 % deg m kg g mg s min h d K mol Pa bar N J W V A L T Ohm [ppm]'.split(' '));

const isUnit = (unit: string): boolean =>
  unit
    .replaceAll(/[()]/gu, '')
    .split(/[./]/u)
    .every((atom, index) =>
      atom === '' ? index === 0 : unitAtoms.has(atom.replace(/(?<=[A-Za-z])-?\d$/u, '')),
    );

const count = (text: string, part: string): number => text.split(part).length - 1;

const bracketsClose = (formula: string): boolean =>
  count(formula, '{') === count(formula, '}') &&
  count(formula, String.raw`\left`) ===
    count(formula, String.raw`\right`) + count(formula, String.raw`\leftarrow`);

const fieldFaults = ({ field, isNumeric, unit, symbol, description }: FieldLine): readonly string[] => {
  const meaning = description === undefined ? [`${field} has no meaning`] : [];
  if (!isNumeric) return meaning;
  return [
    ...(unit === undefined ? [`${field} has no unit`] : []),
    ...(unit === undefined || isUnit(unit) ? [] : [`${field}: ${unit} is no unit code`]),
    ...(symbol === undefined ? [`${field} has no symbol`] : []),
    ...meaning,
  ];
};

/** Fields of one table that a reader cannot tell apart. */
const twins = (lines: readonly FieldLine[], part: 'symbol' | 'description'): readonly string[] =>
  lines.flatMap((line, index) => {
    const first = lines
      .slice(0, index)
      .find((other) => line[part] !== undefined && other[part] === line[part]);
    return first === undefined ? [] : [`${line.field} has the ${part} of ${first.field}`];
  });

const tableFaults = (lines: readonly FieldLine[]): readonly string[] => [
  ...lines.flatMap(fieldFaults),
  ...twins(lines, 'symbol'),
  ...twins(lines, 'description'),
];

/** Which parts of a declaration are absent or malformed; none in a complete one. For tests. */
export const declarationFaults = (subject: Calculation): readonly string[] => {
  const outputs = fieldTable(subject.outputs);
  return [
    ...(/^[a-z][A-Za-z]*\.[a-z][A-Za-z0-9]*$/u.test(subject.id) ? [] : ['id is not of the form domain.name']),
    ...(['title', 'range', 'formula'] as const)
      .filter((part) => subject[part].trim() === '')
      .map((part) => `no ${part}`),
    ...(bracketsClose(subject.formula) ? [] : ['braces or brackets of the formula do not close']),
    ...(outputs.length === 0 ? ['no outputs'] : []),
    ...tableFaults(fieldTable(subject.inputs)),
    ...tableFaults(outputs),
    ...(subject.source.length === 0 ? ['no source'] : []),
    ...subject.source
      .filter(({ citation }) => findSource(citation) === undefined)
      .map(({ citation }) => `${citation} has no key in sources.json`),
  ];
};
