import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { EngineResult, PeerStep, Task } from './subject.js';

/** Runs a subject in a process of its own. What it has printed when its time is up counts; the rest it did not do. */
export function runSubject(task: Task & { subject: 'engine' }, mostMs: number): EngineResult | null;
export function runSubject(task: Task, mostMs: number): PeerStep[];
export function runSubject(task: Task, mostMs: number): EngineResult | PeerStep[] | null {
  const run = spawnSync(
    process.execPath,
    ['--expose-gc', '--import', 'tsx', join(import.meta.dirname, 'subject.ts'), JSON.stringify(task)],
    { encoding: 'utf8', timeout: mostMs, killSignal: 'SIGKILL', maxBuffer: 1e8 },
  );
  const lines = run.stdout.split('\n').filter((line) => line.startsWith('{'));
  if (task.subject !== 'engine') return lines.map((line) => JSON.parse(line) as PeerStep);
  if (lines[0] !== undefined) return JSON.parse(lines[0]) as EngineResult;
  if (run.status !== null) throw new Error(run.stderr);
  return null;
}
