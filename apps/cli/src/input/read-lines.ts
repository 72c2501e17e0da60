/** Longest line of a batch [letters]. */
export const longestLine = 1_000_000;

/** A line, or that it was too long to be read. */
export type Line = { readonly text: string } | { readonly tooLong: true };

/**
 * Lines of a stream, one after another, without their ends. Only one line is held at a time, and of one that is
 * too long nothing; the empty rest after the last line end is no line.
 */
export async function* readLines(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Line> {
  const decoder = new TextDecoder();
  let rest = '';
  let skipping = false;
  const finish = (end: string): Line => {
    const line: Line =
      skipping || rest.length + end.length > longestLine
        ? { tooLong: true }
        : { text: (rest + end).replace(/\r$/, '') };
    rest = '';
    skipping = false;
    return line;
  };
  const keep = (part: string): void => {
    if (skipping) return;
    rest += part;
    if (rest.length > longestLine) {
      rest = '';
      skipping = true;
    }
  };
  for await (const chunk of chunks) {
    const parts = decoder.decode(chunk, { stream: true }).split('\n');
    const last = parts.pop() ?? '';
    for (const part of parts) yield finish(part);
    keep(last);
  }
  keep(decoder.decode());
  if (skipping || rest !== '') yield finish('');
}
