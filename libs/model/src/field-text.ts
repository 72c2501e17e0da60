import { formatNumber, parseQuantity, readNumber, thinSpace } from '@flangewise/quantities';
import { fail, type Outcome, succeed } from './outcome.js';
import type { ItemField } from './item-fields.js';
import { toHeld, toShown } from './shown-unit.js';

/** What stands in a cell of a table: numbers in the unit of the column, true or false, text; null for nothing. */
export type Cell = string | number | boolean | null;

/** An end of digits that no number of a table has. */
const mostDigits = 17;

/** A number of a table, in the unit of its column. */
const isExact = (field: ItemField, held: number, shown: number): boolean => {
  const conversion = field.unit?.conversion;
  return conversion === undefined || toHeld(shown, conversion.shown, conversion) === held;
};

/**
 * A held number in the unit of its column; with the unit in which it is held where it would not be read back to the
 * last digit.
 */
const numberCell = (field: ItemField, held: number): number | string => {
  const shown = toShown(held, field.unit);
  if (isExact(field, held, shown)) return shown;
  return `${String(held)} ${field.unit?.conversion?.held.code ?? ''}`.trim();
};

const separator = ';';

/** Texts that can stand between separators as they are. */
const isPlain = (text: string): boolean =>
  text !== '' && text.trim() === text && !text.includes(separator) && !text.startsWith('[');

const listCell = (texts: readonly string[]): string =>
  texts.every(isPlain) && texts.length > 0 ? texts.join(`${separator} `) : JSON.stringify(texts);

/** What a table holds of a written field. */
export const cellOf = (field: ItemField, value: unknown): Cell => {
  if (value === undefined) return null;
  if (value === null) return 'null';
  switch (field.form) {
    case 'text':
    case 'choice':
      return String(value);
    case 'yes or no':
      return value === true;
    case 'number':
    case 'whole number':
      return typeof value === 'number' ? numberCell(field, value) : String(value);
    case 'texts':
      return Array.isArray(value) ? listCell(value.map(String)) : JSON.stringify(value);
    case 'numbers':
      return Array.isArray(value)
        ? listCell(value.map((one) => String(typeof one === 'number' ? numberCell(field, one) : one)))
        : JSON.stringify(value);
    case 'document':
      return JSON.stringify(value);
  }
};

const yes = /^(yes|true|1|wahr|vrai|ja|oui)$/i;
const no = /^(no|false|0|falsch|faux|nein|non)$/i;

/** A cell as one text, as a form shows it to be changed. */
export const cellText = (cell: Cell): string =>
  cell === null ? '' : typeof cell === 'boolean' ? (cell ? 'yes' : 'no') : String(cell);

const people = (shown: number): string => formatNumber(shown, mostDigits);

const numberForPeople = (field: ItemField, held: number): string => {
  const number = people(toShown(held, field.unit));
  return field.unit === undefined ? number : `${number}${thinSpace}${field.unit.label}`;
};

/** A written field for people, to the last digit: "82.5 mm", "yes", "FKM, PTFE". */
export const fieldText = (field: ItemField, value: unknown): string => {
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return numberForPeople(field, value);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value) && field.form !== 'document')
    return value.length === 0
      ? 'none'
      : value.map((one) => (typeof one === 'number' ? numberForPeople(field, one) : String(one))).join(', ');
  return typeof value === 'string' ? value : JSON.stringify(value);
};

const isBound = (value: number | undefined): value is number =>
  value !== undefined && Math.abs(value) < Number.MAX_SAFE_INTEGER;

const boundTexts = ({ bounds, unit }: ItemField): readonly string[] => [
  ...(isBound(bounds.exclusiveMinimum) ? [`above ${String(toShown(bounds.exclusiveMinimum, unit))}`] : []),
  ...(isBound(bounds.minimum) ? [`at least ${String(toShown(bounds.minimum, unit))}`] : []),
  ...(isBound(bounds.exclusiveMaximum) ? [`below ${String(toShown(bounds.exclusiveMaximum, unit))}`] : []),
  ...(isBound(bounds.maximum) ? [`at most ${String(toShown(bounds.maximum, unit))}`] : []),
];

/** What may be written in a field, in words: "a number in mm, at least 0". */
export const allowedText = (field: ItemField): string => {
  const inUnit = field.unit === undefined ? '' : ` in ${field.unit.label}`;
  switch (field.form) {
    case 'text':
      return field.example === undefined ? 'a text' : `a text like ${field.example}`;
    case 'choice':
      return `one of ${field.choices.join(', ')}`;
    case 'yes or no':
      return 'yes or no';
    case 'number':
    case 'whole number':
      return [`a ${field.form}${inUnit}`, ...boundTexts(field)].join(', ');
    case 'texts':
      return field.choices.length > 0
        ? `some of ${field.choices.join(', ')}, with a semicolon between them`
        : 'texts with a semicolon between them';
    case 'numbers':
      return [`numbers${inUnit} with a semicolon between them`, ...boundTexts(field)].join(', ');
    case 'document':
      return 'a value as JSON';
  }
};

type Read<T = unknown> = Outcome<T, string>;

const refuse = (field: ItemField, why?: string): Read<never> =>
  fail(`${why === undefined ? '' : `${why}; `}give ${allowedText(field)}`);

const isWithin = ({ bounds }: ItemField, held: number): boolean =>
  (bounds.minimum === undefined || held >= bounds.minimum) &&
  (bounds.maximum === undefined || held <= bounds.maximum) &&
  (bounds.exclusiveMinimum === undefined || held > bounds.exclusiveMinimum) &&
  (bounds.exclusiveMaximum === undefined || held < bounds.exclusiveMaximum);

const checked = (field: ItemField, held: number): Read<number> => {
  if (!Number.isFinite(held)) return refuse(field);
  if (field.form === 'whole number' && !Number.isInteger(held)) return refuse(field, 'it is not whole');
  return isWithin(field, held) ? succeed(held) : refuse(field, 'it is past what is allowed');
};

const heldNumber = (field: ItemField, shown: number): number => {
  const conversion = field.unit?.conversion;
  return conversion === undefined ? shown : toHeld(shown, conversion.shown, conversion);
};

/** Plain digits with a point, as tables of machines have them. */
const plainNumber = /^[+-]?\d*\.?\d+(e[+-]?\d+)?$/i;

/** A number with a unit that is not the one of its column. */
const withUnit = (
  field: ItemField,
  text: string,
  { value, rest }: { value: number; rest: string },
): Read<number> => {
  const conversion = field.unit?.conversion;
  if (conversion === undefined) return refuse(field, `"${rest}" does not belong there`);
  if (rest === conversion.held.code) return checked(field, value);
  const parsed = parseQuantity(text, conversion.kind);
  if (!parsed.ok) return refuse(field, parsed.error.message);
  const { given, unit, reference, si } = parsed.value;
  return checked(field, reference === 'absolute' ? si : toHeld(given, unit, conversion));
};

const numberText = (field: ItemField, text: string): Read<number> => {
  if (plainNumber.test(text)) return checked(field, heldNumber(field, Number(text)));
  const read = readNumber(text);
  switch (read.as) {
    case 'nothing':
      return refuse(field, 'it is no number');
    case 'either':
      return refuse(field, `its comma can be read in two ways, ${read.readings.map(String).join(' or ')}`);
    case 'number':
      return read.rest === '' || read.rest === field.unit?.label
        ? checked(field, heldNumber(field, read.value))
        : withUnit(field, text, read);
  }
};

/** Signs without width, and blanks between thousands that come along when shown numbers are copied. */
const withoutWidth = (text: string): string => text.replaceAll(/[\u200b\u2060\ufeff]/g, '').trim();

const readNumberCell = (field: ItemField, cell: string | number | boolean): Read<number> => {
  if (typeof cell === 'number') return checked(field, heldNumber(field, cell));
  return typeof cell === 'boolean' ? refuse(field, 'it is no number') : numberText(field, withoutWidth(cell));
};

const listTexts = (cell: string): readonly unknown[] | undefined => {
  if (!cell.startsWith('['))
    return cell
      .split(separator)
      .map((text) => text.trim())
      .filter((text) => text !== '');
  return jsonOf(cell, Array.isArray);
};

function jsonOf<T>(text: string, is: (value: unknown) => value is T): T | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return is(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

const readList = (field: ItemField, cell: string): Read => {
  const texts = listTexts(cell);
  if (texts === undefined) return refuse(field, 'it is no list');
  const read = texts.map((one): Read => {
    if (field.form === 'numbers') return readNumberCell(field, one as string | number);
    const text = String(one);
    return field.choices.length > 0 && !field.choices.includes(text)
      ? refuse(field, `"${text}" is none of them`)
      : succeed(text);
  });
  const refused = read.find((one) => !one.ok);
  return refused ?? succeed(read.map((one) => (one.ok ? one.value : undefined)));
};

const readText = (field: ItemField, text: string): Read<string> => {
  if (field.form === 'choice' && !field.choices.includes(text)) {
    const meant = field.choices.find((choice) => choice.toLowerCase() === text.toLowerCase());
    return meant === undefined ? refuse(field) : succeed(meant);
  }
  return field.pattern === undefined || field.pattern.test(text) ? succeed(text) : refuse(field);
};

/** Whether nothing is written in a cell. */
export const isBlankCell = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');

/** A written cell as items hold it, or what may be written there instead. */
export const readCell = (field: ItemField, cell: string | number | boolean): Read => {
  if (cell === 'null' && field.takesNull) return succeed(null);
  const text = typeof cell === 'string' ? cell.trim() : cellText(cell);
  switch (field.form) {
    case 'text':
    case 'choice':
      return readText(field, text);
    case 'yes or no':
      return yes.test(text) ? succeed(true) : no.test(text) ? succeed(false) : refuse(field);
    case 'number':
    case 'whole number':
      return readNumberCell(field, cell);
    case 'texts':
      return readList(field, text);
    case 'numbers':
      return typeof cell === 'number' ? readListOfOne(field, cell) : readList(field, text);
    case 'document': {
      const value = jsonOf(text, (one): one is unknown => one !== undefined);
      return value === undefined ? refuse(field, 'it cannot be read') : succeed(value);
    }
  }
};

/** A list of one number, which a workbook holds as a number. */
const readListOfOne = (field: ItemField, cell: number): Read => {
  const one = readNumberCell(field, cell);
  return one.ok ? succeed([one.value]) : one;
};
