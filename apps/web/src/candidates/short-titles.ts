/** Titles beside each other: their first part, and of the rest only what not all have. */
export const shortTitles = (titles: readonly string[]): readonly string[] => {
  const split = titles.map((title) => title.split(', '));
  const shared = (part: string): boolean => split.every((parts) => parts.includes(part));
  return split.map(([first = '', ...rest]) => [first, ...rest.filter((part) => !shared(part))].join(', '));
};
