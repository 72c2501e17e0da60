import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Assessment, ExplainAnswer, NarrowAnswer, SolveAnswer, SystemInput } from '@flangewise/model';
import { run, runJson } from '../../apps/cli/src/testing/run.js';

/** What the command line answers about the same documents. */

const ask = async (command: string, document: unknown): Promise<unknown> =>
  (await runJson([command, '-'], document)).answer;

export const solveOf = async (inquiry: unknown): Promise<SolveAnswer> =>
  (await ask('solve', inquiry)) as SolveAnswer;
export const checkOf = async (system: SystemInput): Promise<Assessment> =>
  (await ask('check', system)) as Assessment;
export const narrowOf = async (system: SystemInput): Promise<NarrowAnswer> =>
  (await ask('narrow', system)) as NarrowAnswer;

export const explainOf = async (document: unknown): Promise<ExplainAnswer> =>
  (await ask('explain', document)) as ExplainAnswer;

/** The documents of an offer by file name. */
export async function offerFilesOf(
  system: SystemInput,
  names: readonly string[],
): Promise<ReadonlyMap<string, Buffer>> {
  const folder = mkdtempSync(join(tmpdir(), 'flangewise-offer-'));
  try {
    const { exit, said } = await run(['offer', '-', '--out', join(folder, 'offer')], system);
    if (exit !== 0) throw new Error(`the command line was to make the offer; it ended with ${exit}: ${said}`);
    return new Map(names.map((name) => [name, readFileSync(join(folder, 'offer', name))]));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
