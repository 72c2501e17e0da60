export interface Measured {
  readonly what: string;
  /** Milliseconds, as the goal says. */
  readonly goalMs: number;
  readonly medianMs: number;
  readonly p95Ms: number;
  readonly runs: number;
}

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;

/** Median and 95th percentile of times [ms]. */
export const measured = (what: string, goalMs: number, times: readonly number[]): Measured => {
  const sorted = times.toSorted((a, b) => a - b);
  return {
    what,
    goalMs,
    medianMs: quantile(sorted, 0.5),
    p95Ms: quantile(sorted, 0.95),
    runs: sorted.length,
  };
};

/** Runs a task so many times, after one run that is not counted, and says median and 95th percentile. */
export const measure = async (
  what: string,
  goalMs: number,
  { runs, task }: { readonly runs: number; readonly task: (run: number) => unknown },
): Promise<Measured> => {
  await task(-1);
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    await task(run);
    times.push(performance.now() - start);
  }
  return measured(what, goalMs, times);
};

const columns = (cells: readonly string[]): string =>
  [cells[0]?.padEnd(58), ...cells.slice(1).map((cell) => cell.padStart(12))].join('');

/** A table with goal, median, p95 and how the median stands to the goal. */
export const tableOf = (rows: readonly Measured[]): string =>
  [
    columns(['', 'goal ms', 'median ms', 'p95 ms', 'of goal', 'runs']),
    ...rows.map((r) =>
      columns([
        r.what,
        r.goalMs.toFixed(0),
        r.medianMs.toFixed(1),
        r.p95Ms.toFixed(1),
        `${((100 * r.medianMs) / r.goalMs).toFixed(0)} %`,
        String(r.runs),
      ]),
    ),
  ].join('\n');
