import type { RulePage } from '@flangewise/model';

/** A rule with its number in the book, from 1. */
export interface NumberedPage {
  readonly number: number;
  readonly page: RulePage;
}

const textOf = ({ id, title, group, kind, parts, conditions, sources, media }: RulePage): string =>
  [
    id,
    title,
    group,
    kind,
    ...parts.map((part) => part.title),
    ...conditions,
    ...sources.map(({ full }) => full),
    ...media,
  ]
    .join(' ')
    .toLowerCase();

/** Rules that hold every word, in the order of the book. */
export const findRules = (pages: readonly RulePage[], text: string): readonly NumberedPage[] => {
  const words = text
    .toLowerCase()
    .split(/\s+/u)
    .filter((word) => word !== '');
  return pages.flatMap((page, i) => {
    const all = textOf(page);
    return words.every((word) => all.includes(word)) ? [{ number: i + 1, page }] : [];
  });
};
