/** Signs that the fonts of the documents lack, and what stands for them. */
const substitutes: Readonly<Record<string, string>> = {
  '\u2060': '',
  '\u202f': '\u2009',
  '\u2002': ' ',
  '\u03d1': 'θ',
  '\u221d': '~',
  '\u2300': 'Ø',
};

/** A number and its unit stay on one line. */
const unitAfterNumber =
  /(\d) (?=(?:mm|cm|m|µm|mL|L|bar|mbar|kW|W|V|A|kg|g|K|°C|N·m|kN|N|h|min|s|d|%|mPa·s|L\/min|m³\/h|1\/min|kPa|MPa|€|×|cm²|mm²|m²)(?![\p{L}\d]))/gu;

/** Text as the fonts can show it; line breaks become spaces, control characters go. */
export const printText = (text: string): string =>
  [
    ...text
      .replace(/[\r\n\t]+/g, ' ')
      .replace(unitAfterNumber, '$1\u00a0')
      .replace(/[ \u00a0]× |(?<=\bPS) (?=\d)/g, (gap) => gap.replaceAll(' ', '\u00a0')),
  ]
    .map((sign) => substitutes[sign] ?? sign)
    .filter((sign) => (sign.codePointAt(0) ?? 0) >= 0x20)
    .join('');
