import { spawn, type ChildProcess } from 'node:child_process';
import { closeSync, openSync } from 'node:fs';
import { lastLines } from './last-lines.js';
import { problem, type StartProblem } from './problems.js';

export interface ChildOptions {
  /** How a person knows it, for instance `The web server`. */
  readonly title: string;
  /** Arguments of Node: options, the script, its arguments. */
  readonly args: readonly string[];
  readonly cwd: string;
  readonly env: Readonly<Record<string, string>>;
  readonly logFile: string;
}

/** A Node process of ours, which ends with us: it has a channel to us and stops when that breaks. */
export interface Child {
  readonly process: ChildProcess;
  /** Resolves when it ended, with what to tell if nobody asked it to. */
  readonly ended: Promise<StartProblem>;
  readonly stop: () => Promise<void>;
  /** What to tell when it is not ready in time. */
  readonly tooSlow: (seconds: number) => StartProblem;
}

const stopLimitMs = 10_000;

export function startChild(options: ChildOptions): Child {
  const { title, logFile } = options;
  const log = openSync(logFile, 'a');
  const child = spawn(process.execPath, options.args, {
    cwd: options.cwd,
    env: { ...process.env, ...options.env },
    stdio: ['ignore', log, log, 'ipc'],
    // A group of its own: Ctrl-C in the terminal reaches us alone, and we stop things in order, with all that they started.
    detached: true,
  });
  closeSync(log);
  const ended = new Promise<StartProblem>((resolve) => {
    const tell = (end: string): void =>
      resolve(problem('PART_FAILED', { part: title, end, file: logFile, log: lastLines(logFile) }));
    child.once('error', (error) => tell(error.message));
    child.once('exit', (code, signal) => tell(signal ?? `exit code ${code ?? 'unknown'}`));
  });
  const signalGroup = (signal: NodeJS.Signals): void => {
    if (child.pid === undefined) return;
    try {
      if (process.platform === 'win32') child.kill(signal);
      else process.kill(-child.pid, signal);
    } catch {
      // It has ended already.
    }
  };
  return {
    process: child,
    ended,
    stop: async () => {
      signalGroup('SIGTERM');
      const killer = setTimeout(() => signalGroup('SIGKILL'), stopLimitMs);
      await ended;
      clearTimeout(killer);
    },
    tooSlow: (seconds) =>
      problem('PART_TOO_SLOW', { part: title, seconds, file: logFile, log: lastLines(logFile) }),
  };
}
