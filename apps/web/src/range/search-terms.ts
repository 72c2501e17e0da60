import { findUnit, type Kind, units } from '@flangewise/quantities';

/** Plain spaces, and none between the digits of a number. */
const spaced = (text: string): string =>
  text
    .replaceAll(/(?<=\d)\u2009\u2060?(?=\d{3}(?!\d))/g, '')
    .replaceAll('\u2060', '')
    .replaceAll(/[\s\u2009]+/g, ' ');

/** The same in small letters. */
export const plain = (text: string): string => spaced(text).toLowerCase();

const kinds = Object.keys(units) as Kind[];

/** How a unit is printed; undefined for a word that is none. */
const unitLabel = (word: string): string | undefined =>
  kinds.map((kind) => findUnit(kind, word)?.label).find((label) => label !== undefined && label !== '');

/** A number, and what is written close to it: "5", "1,5", "5l". */
const numberAndRest = /^(\d+(?:[.,]\d+)?)(.*)$/;

/** The words of a search; a number and its unit are one: "5 L vessel" → "5 l", "vessel". */
export function searchTerms(text: string): readonly string[] {
  const words = spaced(text).trim().split(' ');
  const terms: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] ?? '';
    const [, number, rest] = numberAndRest.exec(word) ?? [];
    const label = number === undefined ? undefined : unitLabel(rest || (words[i + 1] ?? ''));
    if (number === undefined || label === undefined) terms.push(word.toLowerCase());
    else {
      terms.push(plain(`${number.replace(',', '.')} ${label}`));
      if (rest === '') i += 1;
    }
  }
  return terms.filter((term) => term !== '');
}

/** A letter, a digit, a minus or a decimal point before it makes it the end of another word. */
const notBefore = String.raw`(?<![\p{L}\p{N}−]|\d[.,])`;
const notAfter = String.raw`(?![\p{L}\p{N}]|[.,]\d)`;

const escaped = (term: string): string => term.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);

/** Finds a term as a whole word or value. */
export const wholeTerm = (term: string): RegExp => new RegExp(notBefore + escaped(term) + notAfter, 'u');

/** Finds words that begin with a term. */
export const termBeginning = (term: string): RegExp => new RegExp(notBefore + escaped(term), 'u');
