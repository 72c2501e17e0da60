import { succeed } from '@flangewise/model';
import type { Terminal } from '../terminal.js';
import { type OrRefusal, refuse } from '../trouble.js';
import { placeName, readText } from './read-text.js';

/** Line and column, from 1, of a position in a text. */
const placeAt = (text: string, position: number): string => {
  const before = text.slice(0, position).split('\n');
  return `line ${String(before.length)}, column ${String((before.at(-1)?.length ?? 0) + 1)}`;
};

/** What the parser says, with line and column where it tells the position. */
const parserSays = (text: string, error: unknown): string => {
  if (text.trim() === '') return 'it is empty';
  const message = error instanceof Error ? error.message : String(error);
  const position = /at position (\d+)/.exec(message)?.[1];
  return position === undefined ? message : `${message} (${placeAt(text, Number(position))})`;
};

/** Parses a text that should be JSON. */
export const parseJson = (text: string, place: string): OrRefusal<unknown> => {
  try {
    return succeed(JSON.parse(text) as unknown);
  } catch (error) {
    return refuse({
      code: 'INPUT_NOT_JSON',
      given: place,
      message: `is not JSON: ${parserSays(text, error)}`,
    });
  }
};

/** For whoever comes with another file. */
const whatIsRead =
  'the file has to hold a JSON document, for instance like those in tests/acceptance/inquiries and tests/acceptance/systems';

/** Reads a JSON document from a file, or from standard input for `-`. */
export const readJson = async (
  path: string,
  terminal: Pick<Terminal, 'stdin'>,
): Promise<OrRefusal<unknown>> => {
  const text = await readText(path, terminal);
  if (!text.ok) return text;
  const document = parseJson(text.value, placeName(path));
  return document.ok
    ? document
    : refuse(...document.error.troubles.map((one) => ({ ...one, message: `${one.message}; ${whatIsRead}` })));
};
