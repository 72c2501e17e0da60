import type { ExitCode } from './exit-code.js';
import type { Terminal } from './terminal.js';
import type { OrRefusal } from './trouble.js';

/** Options as typed, by name in camel case. */
export type Options = Readonly<Record<string, string | boolean | undefined>>;

export interface Request {
  /** What stands after the name of the command. */
  readonly operands: readonly string[];
  readonly options: Options;
  readonly terminal: Terminal;
}

/** What a command found out, told in one of two ways: as a document, or in words. */
export interface Answer {
  readonly exit: ExitCode;
  /** Absent where the command has written its lines already. */
  readonly told?: {
    readonly document: unknown;
    readonly words: (columns: number) => string;
  };
  /** For standard error: what the reader should know besides. */
  readonly notes?: readonly string[];
}

/**
 * A command, declared once: help, parsing and the table of commands follow from it. `run` returns its answer and
 * writes nothing, but for lines that have to flow; heavy libraries are imported inside it, so that a command loads
 * only what it needs.
 */
export interface Command {
  /** Name and operands, for instance `solve <inquiry>`. */
  readonly usage: string;
  readonly summary: string;
  /** Whole lines; the first one also answers a line that lacks something. */
  readonly examples: readonly [string, ...string[]];
  readonly details?: string;
  /** Flags with their meaning, for instance `['--out <folder>', 'where the files go']`. */
  readonly options?: readonly (readonly [flags: string, meaning: string])[];
  readonly run: (request: Request) => Promise<OrRefusal<Answer>>;
}

/** The text given with an option; undefined where it was not given. */
export const textOption = (options: Options, name: string): string | undefined => {
  const value = options[name];
  return typeof value === 'string' ? value : undefined;
};
