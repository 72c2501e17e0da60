import type { Terminal } from '../terminal.js';

/** A terminal that keeps what is written, for tests. */
export interface MemoryTerminal extends Terminal {
  readonly written: { out: string; said: string };
}

async function* once(text: string): AsyncGenerator<Uint8Array> {
  await Promise.resolve();
  yield new TextEncoder().encode(text);
}

/** @param stdin what is typed into standard input */
export const memoryTerminal = (stdin = ''): MemoryTerminal => {
  const written = { out: '', said: '' };
  return {
    written,
    out: (text) => {
      written.out += text;
      return Promise.resolve();
    },
    say: (text) => {
      written.said += `${text}\n`;
    },
    stdin: () => once(stdin),
    columns: 100,
    today: () => '2026-11-24',
  };
};
