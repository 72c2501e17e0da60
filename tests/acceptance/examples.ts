import type { Assessment, NarrowAnswer, SystemInput } from '@flangewise/model';
import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runJson } from '../../apps/cli/src/testing/run.js';

/** Where the examples lie. */
export const examplesFolder = fileURLToPath(new URL('.', import.meta.url));

export const pathOf = (...parts: readonly string[]): string => join(examplesFolder, ...parts);

export const inquiryNames: readonly string[] = readdirSync(pathOf('inquiries'))
  .filter((name) => name.endsWith('.json'))
  .map((name) => name.replace(/\.json$/, ''))
  .sort();

export const readExample = (...parts: readonly string[]): unknown =>
  JSON.parse(readFileSync(pathOf(...parts), 'utf8')) as unknown;

/** An example by its path below this folder. */
export type Examples = ReadonlyMap<string, unknown>;

const candidateOf = async (inquiry: string): Promise<SystemInput> =>
  (await runJson(['solve', pathOf('inquiries', `${inquiry}.json`), '--take', 'A'])).answer as SystemInput;

const withVessel = (system: SystemInput, vessel: string): SystemInput => {
  const [first, ...rest] = system.sets ?? [];
  return { ...system, sets: [{ ...first, choices: { ...first?.choices, vessel } }, ...rest] };
};

const broken = async (system: SystemInput): Promise<number> =>
  ((await runJson(['check', '-'], system)).answer as Assessment).results.filter((r) => r.status === 'not met')
    .length;

/** The system with its first vessel replaced by the one that breaks the fewest rules: a slip that could happen. */
const withSlip = async (system: SystemInput): Promise<SystemInput> => {
  const { slots } = (await runJson(['narrow', '-'], system)).answer as NarrowAnswer;
  let slip: { readonly document: SystemInput; readonly breaks: number } | undefined;
  for (const id of slots['sets[0].vessel']?.refused ?? []) {
    if (id === null) continue;
    const document = { ...withVessel(system, id), name: 'broken' };
    const breaks = await broken(document);
    if (breaks > 0 && breaks < (slip?.breaks ?? Number.POSITIVE_INFINITY)) slip = { document, breaks };
  }
  if (slip === undefined)
    throw new Error('every vessel of the range fits this system; nothing can be broken');
  return slip.document;
};

/** Systems made from the answers to inquiries: one set, two sets, and one that breaks rules. */
export const makeSystems = async (): Promise<Examples> => {
  const one = await candidateOf('01-hydrogenation-completed');
  const two = await candidateOf('08-glass-and-steel-completed');
  return new Map<string, unknown>([
    ['systems/01-hydrogenation.json', one],
    ['systems/08-glass-and-steel.json', two],
    ['systems/01-hydrogenation-broken.json', await withSlip(one)],
  ]);
};

const solved = [
  '01-hydrogenation',
  '01-hydrogenation-completed',
  '07-glass-16-bar',
  '08-glass-and-steel-completed',
];

const offerAnswer = async (system: unknown): Promise<unknown> => {
  const folder = await mkdtemp(join(tmpdir(), 'example-offer-'));
  try {
    const issue = ['--client', 'Example client, Delft', '--date', '2026-11-24', '--discount', '5'];
    return (await runJson(['offer', '-', '--out', join(folder, 'offer'), ...issue], system)).answer;
  } finally {
    await rm(folder, { recursive: true });
  }
};

/** The answers to the example inquiries and systems. */
export const makeAnswers = async (systems: Examples): Promise<Examples> => {
  const answers = new Map<string, unknown>();
  for (const name of solved) {
    const path = pathOf('inquiries', `${name}.json`);
    answers.set(`answers/${name}.solve.json`, (await runJson(['solve', path, '--most', '3'])).answer);
  }
  answers.set(
    'answers/07-glass-16-bar.explain.json',
    (await runJson(['explain', pathOf('inquiries', '07-glass-16-bar.json')])).answer,
  );
  for (const [path, system] of systems) {
    const name = path.replace(/^systems\/(.*)\.json$/, '$1');
    for (const command of ['check', 'narrow', 'explain'])
      answers.set(`answers/${name}.${command}.json`, (await runJson([command, '-'], system)).answer);
    answers.set(`answers/${name}.offer.json`, await offerAnswer(system));
  }
  return answers;
};
