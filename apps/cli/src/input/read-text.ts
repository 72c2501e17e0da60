import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { succeed } from '@flangewise/model';
import type { Terminal } from '../terminal.js';
import { type OrRefusal, refuse } from '../trouble.js';

/** Largest document [bytes]; an inquiry takes a few thousand, a whole catalogue under two million. */
const largestDocument = 10_000_000;

/** How people call the place that a document comes from. */
export const placeName = (path: string): string => (path === '-' ? 'standard input' : path);

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT';

const tooLarge = (path: string, bytes: number): ReturnType<typeof refuse> =>
  refuse({
    code: 'INPUT_TOO_LARGE',
    given: `${placeName(path)}, ${bytes > largestDocument ? `${(bytes / 1e6).toFixed(1)} MB` : 'larger'}`,
    message: `a document may have at most ${String(largestDocument / 1e6)} MB; give one inquiry, system or catalogue at a time`,
  });

const unreadable = (path: string, error: unknown): ReturnType<typeof refuse> =>
  isMissing(error)
    ? refuse({
        code: 'INPUT_NOT_FOUND',
        given: path,
        message: 'there is no such file; give the path of a file, or - for standard input',
      })
    : refuse({
        code: 'INPUT_UNREADABLE',
        given: placeName(path),
        message: `cannot be read: ${error instanceof Error ? error.message : String(error)}`,
      });

/** The bytes of a file, or of standard input for `-`. */
export const openInput = async (
  path: string,
  terminal: Pick<Terminal, 'stdin'>,
): Promise<OrRefusal<{ readonly chunks: AsyncIterable<Uint8Array>; readonly bytes?: number }>> => {
  if (path === '-') return succeed({ chunks: terminal.stdin() });
  try {
    const found = await stat(path);
    if (found.isDirectory())
      return refuse({
        code: 'INPUT_UNREADABLE',
        given: path,
        message: 'is a folder; give the path of a file',
      });
    return succeed({ chunks: createReadStream(path), bytes: found.size });
  } catch (error) {
    return unreadable(path, error);
  }
};

/** The whole text of a file, or of standard input for `-`. UTF-8; a byte order mark is dropped. */
export const readText = async (
  path: string,
  terminal: Pick<Terminal, 'stdin'>,
): Promise<OrRefusal<string>> => {
  const input = await openInput(path, terminal);
  if (!input.ok) return input;
  if ((input.value.bytes ?? 0) > largestDocument) return tooLarge(path, input.value.bytes ?? 0);
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  try {
    for await (const chunk of input.value.chunks) {
      bytes += chunk.length;
      if (bytes > largestDocument) return tooLarge(path, bytes);
      chunks.push(chunk);
    }
  } catch (error) {
    return unreadable(path, error);
  }
  return succeed(new TextDecoder().decode(Buffer.concat(chunks)));
};
