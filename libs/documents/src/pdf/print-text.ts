/** Signs that the fonts of the documents lack, and what stands for them. */
const substitutes: Readonly<Record<string, string>> = {
  '\u2060': '',
  '\u202f': '\u2009',
  '\u2002': ' ',
  '\u03d1': 'θ',
  '\u221d': '~',
  '\u2300': 'Ø',
};

/** Text as the fonts can show it; line breaks become spaces, control characters go. */
export const printText = (text: string): string =>
  [...text.replace(/[\r\n\t]+/g, ' ')]
    .map((sign) => substitutes[sign] ?? sign)
    .filter((sign) => (sign.codePointAt(0) ?? 0) >= 0x20)
    .join('');
