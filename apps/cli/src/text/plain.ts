/** Spaces that keep number and unit together on paper; a terminal wants ordinary ones. */
export const plain = (text: string): string =>
  text.replaceAll(/[\u2009\u202f\u00a0]\u2060?/g, ' ').replaceAll('\u2060', '');

/** Letters that a text takes on a line. */
export const widthOf = (text: string): number => [...text].length;

export const padded = (text: string, width: number): string =>
  text + ' '.repeat(Math.max(0, width - widthOf(text)));

export const paddedLeft = (text: string, width: number): string =>
  ' '.repeat(Math.max(0, width - widthOf(text))) + text;
