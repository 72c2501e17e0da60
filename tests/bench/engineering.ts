/**
 * Median time of every calculation's plain form on a sample input or its first reference case, its goal beside it, and of
 * the form with evidence: `npm run bench:engineering`. Processor time is measured, so that other work on the machine
 * counts little. Exit code 1 where a median misses its goal or a sample is missing.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { calculations, evaluate } from '@flangewise/engineering';

interface Sample {
  readonly calculation: string;
  readonly inputs: Record<string, unknown>;
}

const read = (...path: string[]): Sample[] =>
  JSON.parse(readFileSync(join(import.meta.dirname, ...path), 'utf8')) as Sample[];

/** Samples of calculations without a reference case come first. */
const samples = [...read('engineering-samples.json'), ...read('..', 'reference', 'cases.json')];

const integrations = new Set(['heat.heatUpCurve', 'heat.circulatorCurve']);
const batches = 25;

/** Processor time of this process [µs]. */
const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/** Median over batches [µs]. */
const medianMicroseconds = (task: () => unknown, repeats: number): number => {
  // Code that runs for the first times is not compiled yet.
  for (let i = 0; i < 5 * repeats; i += 1) task();
  const times = Array.from({ length: batches }, () => {
    const start = processorTime();
    for (let i = 0; i < repeats; i += 1) task();
    return (processorTime() - start) / repeats;
  });
  times.sort((a, b) => a - b);
  return times[Math.floor(batches / 2)] ?? Number.NaN;
};

const columns = (id: string, ...cells: readonly string[]): string =>
  `${id.padEnd(40)}${cells.map((cell) => cell.padStart(14)).join('')}\n`;

process.stdout.write(columns('calculation', 'goal µs', 'plain µs', 'evidence µs', ''));
const missing: string[] = [];
const slow: string[] = [];
for (const subject of [...calculations].sort((a, b) => a.id.localeCompare(b.id, 'en'))) {
  const sample = samples.find(({ calculation }) => calculation === subject.id);
  const parsed = sample && subject.inputs.safeParse(sample.inputs);
  if (!sample || !parsed?.success || !evaluate(subject, sample.inputs).ok) {
    missing.push(subject.id);
    continue;
  }
  const [goal, repeats] = integrations.has(subject.id) ? [5000, 5] : [20, 200];
  const plain = medianMicroseconds(() => subject.compute(parsed.data), repeats);
  const evidence = medianMicroseconds(() => subject.compute(parsed.data, () => undefined), repeats);
  if (plain > goal) slow.push(subject.id);
  process.stdout.write(
    columns(subject.id, String(goal), plain.toFixed(2), evidence.toFixed(2), plain > goal ? 'MISSED' : 'met'),
  );
}
const measured = calculations.length - missing.length;
process.stdout.write(
  `${String(measured)} calculations measured: ${String(measured - slow.length)} meet their goal, ${String(slow.length)} miss it` +
    `${slow.length > 0 ? ` (${slow.join(', ')})` : ''}\n` +
    (missing.length > 0 ? `without a sample: ${missing.join(', ')}\n` : ''),
);
process.exitCode = slow.length + missing.length > 0 ? 1 : 0;
