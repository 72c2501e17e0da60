/** What a command may touch of the world outside. Tests put their own in its place. */
export interface Terminal {
  /** Writes to standard output and waits until there is room for more. */
  readonly out: (text: string) => Promise<void>;
  /** Messages, on standard error. */
  readonly say: (text: string) => void;
  readonly stdin: () => AsyncIterable<Uint8Array>;
  /** Letters on a line. */
  readonly columns: number;
  /** Calendar date, `2026-11-24`. */
  readonly today: () => string;
}
