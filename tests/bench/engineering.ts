/**
 * Median time of every calculation's plain form on its first reference case or a sample input: `npm run bench:engineering`.
 * Listed are those over 20 µs; integrations have 5 ms.
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

/** Median over batches, each long enough for the clock [µs]. */
const medianMicroseconds = (task: () => unknown, repeats: number): number => {
  for (let i = 0; i < repeats; i += 1) task();
  const times = Array.from({ length: batches }, () => {
    const start = performance.now();
    for (let i = 0; i < repeats; i += 1) task();
    return ((performance.now() - start) * 1000) / repeats;
  });
  times.sort((a, b) => a - b);
  return times[Math.floor(batches / 2)] ?? Number.NaN;
};

const missing: string[] = [];
const slow: string[] = [];
let measured = 0;
for (const subject of calculations) {
  const sample = samples.find(({ calculation }) => calculation === subject.id);
  const parsed = sample && subject.inputs.safeParse(sample.inputs);
  if (!sample || !parsed?.success || !evaluate(subject, sample.inputs).ok) {
    missing.push(subject.id);
    continue;
  }
  measured += 1;
  const isIntegration = integrations.has(subject.id);
  const median = medianMicroseconds(() => subject.compute(parsed.data), isIntegration ? 5 : 200);
  if (median > 20) {
    const over = isIntegration ? (median > 5000 ? '  OVER 5 ms' : '  (integration, goal 5 ms)') : '';
    slow.push(`${subject.id.padEnd(40)} ${median.toFixed(1).padStart(10)} µs${over}`);
  }
}
process.stdout.write(
  `${String(measured)} calculations measured, ${String(slow.length)} over 20 µs:\n${slow.join('\n')}\n` +
    (missing.length > 0 ? `without a sample: ${missing.join(', ')}\n` : ''),
);
