import { commands } from '../command-table.js';
import { runCommandLine } from '../command-line.js';
import type { ExitCode } from '../exit-code.js';
import { memoryTerminal } from './memory-terminal.js';

export interface Ran {
  readonly exit: ExitCode;
  readonly out: string;
  readonly said: string;
}

/** Runs the command line in this process. An object is typed into standard input as JSON. */
export const run = async (argv: readonly string[], stdin: unknown = ''): Promise<Ran> => {
  const terminal = memoryTerminal(typeof stdin === 'string' ? stdin : JSON.stringify(stdin));
  const exit = await runCommandLine(argv, commands, terminal);
  return { exit, ...terminal.written };
};

/** The same with `--json`, its answer read. */
export const runJson = async (
  argv: readonly string[],
  stdin: unknown = '',
): Promise<Ran & { readonly answer: unknown }> => {
  const ran = await run([...argv, '--json'], stdin);
  return { ...ran, answer: JSON.parse(ran.out) as unknown };
};
