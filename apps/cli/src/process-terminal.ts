import type { Terminal } from './terminal.js';

/** Where the width cannot be asked for, as in a pipe. */
const usualColumns = 110;

const write = (text: string): Promise<void> =>
  new Promise((resolve) => {
    if (process.stdout.write(text)) resolve();
    else process.stdout.once('drain', resolve);
  });

/** The terminal of this process. */
export const processTerminal: Terminal = {
  out: write,
  say: (text) => {
    process.stderr.write(`${text}\n`);
  },
  stdin: () => process.stdin,
  columns: process.stdout.columns || usualColumns,
  today: () => new Date().toLocaleDateString('sv-SE'),
};
