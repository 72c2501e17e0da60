import { inflateSync } from 'node:zlib';

const streamsOf = (pdf: Buffer): string[] => {
  const raw = pdf.toString('latin1');
  return [...raw.matchAll(/stream\r?\n/g)].flatMap(({ index, 0: { length } }) => {
    try {
      return [inflateSync(pdf.subarray(index + length), { finishFlush: 2 }).toString('latin1')];
    } catch {
      return [];
    }
  });
};

/** Characters by glyph, from a table as fonts in a PDF carry it (ISO 32000-1 §9.10.3). */
const glyphsOf = (table: string): ReadonlyMap<string, string> => {
  const glyphs = new Map<string, string>();
  for (const [, first = '', list = ''] of table.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi))
    [...list.matchAll(/<([0-9a-f ]*)>/gi)].forEach(([, code = ''], index) => {
      const glyph = (Number.parseInt(first, 16) + index).toString(16).padStart(4, '0');
      glyphs.set(
        glyph,
        String.fromCharCode(...(code.match(/[0-9a-f]{4}/gi) ?? []).map((c) => Number.parseInt(c, 16))),
      );
    });
  return glyphs;
};

/**
 * The texts of a PDF, read once with the glyphs of each of its fonts: what was set in another font comes out as nonsense, what
 * was set in this one as it was printed. For tests that look for a text.
 */
export function pdfTexts(pdf: Buffer): string[] {
  const streams = streamsOf(pdf);
  const fonts = streams.filter((stream) => stream.includes('beginbfrange')).map(glyphsOf);
  const pages = streams.filter((stream) => /\bT[jJ]\b/.test(stream));
  return fonts.map((glyphs) =>
    pages
      .flatMap((page) => [...page.matchAll(/\[([^\]]*)\] TJ/g)])
      .map(([, pieces = '']) =>
        [...pieces.matchAll(/<([0-9a-f]+)>/gi)]
          .flatMap(([, hex = '']) => hex.match(/.{4}/g) ?? [])
          .map((glyph) => glyphs.get(glyph.toLowerCase()) ?? '?')
          .join(''),
      )
      .join('\n'),
  );
}
