import { spawn } from 'node:child_process';
import { checkout } from '../run/command.js';

export interface Announcement {
  readonly address: string;
  /** Of the people of the demo; undefined where it is not known to this data folder. */
  readonly password: string | undefined;
}

export interface Product {
  readonly pid: number;
  /** Resolves with what it printed once it runs; rejects with its output when it ends before. */
  readonly announced: Promise<Announcement>;
  /** Resolves when it ended. */
  readonly ended: Promise<{ readonly code: number | null; readonly output: string }>;
  /** Asks it to stop, as Ctrl-C does, and waits until it did. */
  readonly stop: () => Promise<void>;
}

function readAnnouncement(output: string): Announcement | undefined {
  const address = /Flangewise runs at (\S+)/.exec(output)?.[1];
  const password = /with the password (\S+)/.exec(output)?.[1];
  const complete = output.includes('Ctrl-C stops it.');
  return complete && address !== undefined ? { address, password } : undefined;
}

/** Starts the product as `npm start` does, on a free port unless the environment says another. */
export function startProduct(environment: Readonly<Record<string, string>>): Product {
  const child = spawn(process.execPath, ['apps/api/src/start/main.mjs'], {
    cwd: checkout,
    env: { ...process.env, NODE_ENV: '', DATABASE_URL: '', PORT: '0', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  const ended = new Promise<{ code: number | null; output: string }>((resolve) => {
    child.once('close', (code) => resolve({ code, output }));
  });
  const announced = new Promise<Announcement>((resolve, reject) => {
    const read = (text: string): void => {
      output += text;
      const announcement = readAnnouncement(output);
      if (announcement !== undefined) resolve(announcement);
    };
    child.stdout.setEncoding('utf8').on('data', read);
    child.stderr.setEncoding('utf8').on('data', read);
    void ended.then((end) => reject(new Error(`The product ended with code ${end.code}:\n${end.output}`)));
  });
  // Who waits for the end alone does not mind that it never ran.
  announced.catch(() => undefined);
  return {
    pid: child.pid ?? 0,
    announced,
    ended,
    stop: async () => {
      child.kill('SIGINT');
      await ended;
    },
  };
}
