import { formatNumber, thinSpace } from '@flangewise/quantities';
import { powerText, unitText } from './figure-text.js';

/** What a calculation declares of one of its inputs; fields of objects are named `field.inner` and `field[].inner`. */
export interface InputField {
  readonly field: string;
  /** UCUM code. */
  readonly unit: string | undefined;
  readonly symbol: string | undefined;
  readonly description: string | undefined;
}

/** The inputs that a calculation declares, by its id. */
export type InputFields = (calculation: string) => readonly InputField[];

/** Whether a pressure is gauge or absolute stands in the name of its field alone. */
const referenceOf = (field: string): string =>
  field.endsWith('Gauge') ? '(g)' : field.endsWith('Abs') ? '(a)' : '';

const inWords = (name: string): string =>
  name.replace(/(?<=[a-z])K$/, ' [K]').replace(/[A-Z](?!\])/g, (letter) => ` ${letter.toLowerCase()}`);

/** "Mass at the end of the shaft, m_t": what it is, without what else the declaration says of it, and its symbol. */
const nameText = (path: string, declared: InputField | undefined): string => {
  const [what = ''] = (declared?.description ?? '').split(/[;:(]/);
  const name = what.trim() === '' ? inWords(path.slice(path.lastIndexOf('.') + 1)) : what.trim();
  return declared?.symbol === undefined ? name : `${name}, ${declared.symbol}`;
};

/** As many digits as a reader needs to redo the calculation. */
const numberText = (value: number): string => {
  const size = Math.abs(value);
  return value !== 0 && (size >= 1e12 || size < 1e-4) ? powerText(value, 6) : formatNumber(value, 6);
};

const valueText = (value: unknown, path: string, declared: readonly InputField[]): string => {
  if (typeof value === 'number') {
    const unit = unitText(declared.find(({ field }) => field === path)?.unit ?? '1');
    return `${numberText(value)}${unit === '' ? '' : `${thinSpace}${unit}${referenceOf(path)}`}`;
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (value === null || value === undefined) return 'not given';
  if (Array.isArray(value))
    return value
      .map((one) => valueText(one, typeof one === 'object' ? `${path}[]` : path, declared))
      .join(', ');
  return Object.entries(value)
    .map(([name, inner]) => inputText(inner, `${path}.${name}`, declared))
    .join(', ');
};

/** One input with its value: "Mass at the end of the shaft, m_t = 2.1 kg". */
const inputText = (value: unknown, path: string, declared: readonly InputField[]): string =>
  `${nameText(
    path,
    declared.find(({ field }) => field === path),
  )} = ${valueText(value, path, declared)}`;

/** What went into a calculation, in words, with units. */
export const inputsText = (
  inputs: Readonly<Record<string, unknown>>,
  declared: readonly InputField[],
): string =>
  Object.entries(inputs)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => inputText(value, name, declared))
    .join('; ');
