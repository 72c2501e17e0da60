import { findSource, type Source } from './sources.js';

/** Keys of standards, books and articles are written small with hyphens; other citations are words for people already. */
const isBareKey = (key: string): boolean => /^[a-z0-9:.-]+$/u.test(key) || /^\d+\/\d+\/E[CU]$/u.test(key);

const upTo = (text: string, end: RegExp): string => text.split(end)[0] ?? text;

/** "Kern, D. Q.: Process Heat Transfer, McGraw-Hill, 1950" is called "Kern 1950". */
const calledByAuthor = (citation: string): string => {
  if (!citation.includes(': ')) return upTo(citation, /, /u);
  const year = citation.match(/\b(?:18|19|20)\d\d\b/gu)?.at(-1);
  const title = upTo(citation.slice(citation.indexOf(': ') + 2), /[,:] /u);
  return `${upTo(citation, /[,:] /u)}${year === undefined ? `: ${title}` : ` ${year}`}`;
};

const shortNames: Readonly<Record<Source['kind'], (citation: string) => string>> = {
  standard: (citation) => upTo(citation, /, /u),
  regulation: (citation) => upTo(citation, /, | on /u),
  book: calledByAuthor,
  article: calledByAuthor,
  'data sheet': (citation) => upTo(citation, /: /u),
  software: (citation) => upTo(citation, /, /u),
  physics: (citation) => upTo(citation, /, | \(/u),
  practice: (citation) => upTo(citation, /: /u),
};

const told = (citation: string, name: (source: Source) => string, between: string): string => {
  const found = findSource(citation);
  if (found === undefined || !isBareKey(found.key)) return citation;
  const rest = citation.slice(found.key.length).replace(/^[ ,;]+/u, '');
  if (rest === '') return name(found);
  const other = findSource(rest);
  return other === undefined
    ? `${name(found)}${between}${rest}`
    : `${name(found)}; ${told(rest, name, between)}`;
};

/** Words in which sources stand by key, each named short instead: "vdi-heat-atlas part D3" → "VDI Heat Atlas part D3". */
export const withSourceNames = (words: string): string =>
  words.replace(/(?<![\w-])[a-z][a-z0-9]*(?:-[a-z0-9:.]*[a-z0-9])+(?![\w-])/gu, (key) => {
    const found = findSource(key);
    return found?.key === key ? shortNames[found.kind](found.citation) : key;
  });

/** A citation in full: `kern-1950 ch. 18` → "Kern, D. Q.: Process Heat Transfer, McGraw-Hill, 1950, ch. 18". */
export const citationText = (citation: string): string => told(citation, (source) => source.citation, ', ');

/** A citation as a table has room for it: `kern-1950 ch. 18` → "Kern 1950, ch. 18", `en-13445-3:2021 §6` → "EN 13445-3:2021 §6". */
export const shortCitation = (citation: string): string => {
  const kind = findSource(citation)?.kind;
  return told(
    citation,
    (source) => shortNames[source.kind](source.citation),
    kind === 'standard' || kind === 'regulation' ? ' ' : ', ',
  );
};
