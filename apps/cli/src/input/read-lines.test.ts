import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestLine, readLines } from './read-lines.js';

async function* inChunks(text: string, size: number): AsyncGenerator<Uint8Array> {
  const bytes = new TextEncoder().encode(text);
  for (let at = 0; at < bytes.length; at += size) {
    await Promise.resolve();
    yield bytes.subarray(at, at + size);
  }
}

const linesOf = async (text: string, size: number): Promise<readonly string[]> => {
  const lines: string[] = [];
  for await (const line of readLines(inChunks(text, size)))
    lines.push('tooLong' in line ? 'TOO LONG' : line.text);
  return lines;
};

describe('readLines', () => {
  it('gives the same lines however the bytes come', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.string({ unit: fc.constantFrom('a', 'µ', '€', '𝄞', ' ') }), { minLength: 1 }),
        fc.integer({ min: 1, max: 9 }),
        async (lines, size) => {
          expect(await linesOf(`${lines.join('\n')}\n`, size)).toEqual(lines);
        },
      ),
    );
  });

  it('takes both line ends, and a last line without one', async () => {
    expect(await linesOf('a\r\nb\nc', 2)).toEqual(['a', 'b', 'c']);
  });

  it('keeps nothing of a line that is too long, and reads on', async () => {
    const long = 'x'.repeat(longestLine + 1);
    expect(await linesOf(`a\n${long}\nb\n${long}`, 65_536)).toEqual(['a', 'TOO LONG', 'b', 'TOO LONG']);
  });
});
