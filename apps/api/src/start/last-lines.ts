import { existsSync, readFileSync } from 'node:fs';

/** The last lines of a log, to be shown with the message of a failure. */
export function lastLines(file: string, count = 20): string {
  if (!existsSync(file)) return '(no log)';
  const lines = readFileSync(file, 'utf8').trimEnd().split('\n').slice(-count);
  return lines.map((line) => `  ${line}`).join('\n');
}
