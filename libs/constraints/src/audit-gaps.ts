import { readDocument, systemSchema, type System } from '@flangewise/model';
import type { Bench } from './bench.js';
import { cheapest } from './cheapest.js';
import { filledWith } from './choices.js';
import { stands } from './stands.js';
import grid from './audit-grid.json' with { type: 'json' };

export type GridRow = (typeof grid.rows)[number];

/** The inquiries that the audit asks, by construction. */
export const auditGrid: readonly GridRow[] = grid.rows;

interface Point {
  readonly construction: string;
  readonly batchL: number;
  readonly pressureBarGauge: number;
  readonly temperatureC: number;
}

const systemAt = (point: Point): System => {
  const inquiry = {
    title: 'Audit',
    process: {
      pressure: { highest: { value: point.pressureBarGauge, unit: 'bar' } },
      temperature: { highest: { value: point.temperatureC, unit: 'Cel' } },
    },
    sets: [{ construction: point.construction, batchVolume: { value: point.batchL, unit: 'L' } }],
  };
  const read = readDocument(systemSchema, { inquiry });
  if (!read.ok) throw new Error(`the audit asks an inquiry that is none: ${JSON.stringify(read.error)}`);
  return read.value;
};

/** So many of the systems that were found last are tried on the next inquiry before the engine is asked. */
const mostTried = 8;

/** Whether anything answers an inquiry: often what answered the one before it, which is told without an engine. */
const createAnswers = (bench: Bench) => {
  let found: readonly System[] = [];
  return (asked: System): boolean => {
    const known = found.find(({ frame, sets }) => stands({ ...asked, frame, sets }, bench));
    const filled = known === undefined ? cheapest(asked, bench) : undefined;
    const answer = known ?? (filled === undefined ? undefined : filledWith(asked, filled));
    if (answer === undefined) return false;
    found = [answer, ...found.filter((one) => one !== answer)].slice(0, mostTried);
    return true;
  };
};

type IsAnswered = ReturnType<typeof createAnswers>;

/** Values that fail, told by where they begin where all above fail too. */
const failing = (values: readonly number[], failed: readonly number[]): string => {
  const lowest = Math.min(...failed);
  const above = values.filter((v) => v >= lowest);
  if (above.length !== failed.length) return `at ${failed.map(String).join(', ')} bar(g)`;
  return lowest === values[0] ? 'at any pressure asked' : `from ${String(lowest)} bar(g)`;
};

/**
 * The pressures at which nothing answers, by temperature. Asked from the hardest on: what answers that often answers the others.
 */
const failuresOf = (
  { construction, pressuresBarGauge, temperaturesC }: GridRow,
  batchL: number,
  isAnswered: IsAnswered,
) =>
  temperaturesC
    .toReversed()
    .map((temperatureC) => ({
      temperatureC,
      failed: pressuresBarGauge
        .toReversed()
        .filter(
          (pressureBarGauge) =>
            !isAnswered(systemAt({ construction, batchL, pressureBarGauge, temperatureC })),
        )
        .toReversed(),
    }))
    .toReversed();

/** What fails for one construction and batch, in words; undefined where nothing does. Temperatures alike in it are told together. */
const gapOf = (row: GridRow, batchL: number, isAnswered: IsAnswered): string | undefined => {
  const { pressuresBarGauge } = row;
  const temperaturesOf = new Map<string, number[]>();
  for (const { temperatureC, failed } of failuresOf(row, batchL, isAnswered)) {
    if (failed.length === 0) continue;
    const text = failing(pressuresBarGauge, failed);
    temperaturesOf.set(text, [...(temperaturesOf.get(text) ?? []), temperatureC]);
  }
  const parts = [...temperaturesOf].map(
    ([text, temperatures]) => `${text} (${temperatures.map(String).join(', ')} °C)`,
  );
  return parts.length === 0 ? undefined : parts.join(', ');
};

const gapsOfRow = (row: GridRow, bench: Bench, onBatch: () => void): readonly string[] => {
  const runs: { readonly text: string; readonly batches: number[] }[] = [];
  const isAnswered = createAnswers(bench);
  let before: string | undefined;
  for (const batchL of row.batchesL) {
    const text = gapOf(row, batchL, isAnswered);
    if (text !== undefined && text === before) runs.at(-1)?.batches.push(batchL);
    else if (text !== undefined) runs.push({ text, batches: [batchL] });
    before = text;
    onBatch();
  }
  return runs.map(
    ({ text, batches }) =>
      `${row.construction}, batch of ${batches.map(String).join(', ')} L: nothing ${text}.`,
  );
};

export interface GapsAsked {
  readonly rows?: readonly GridRow[];
  /** How many batches were asked, of how many. */
  readonly onProgress?: (done: number, of: number) => void;
}

/** Sensible inquiries for which the range finds nothing; batches with the same gap stand in one sentence. */
export const gapsOf = (
  bench: Bench,
  { rows = auditGrid, onProgress = () => undefined }: GapsAsked = {},
): readonly string[] => {
  const of = rows.reduce((sum, { batchesL }) => sum + batchesL.length, 0);
  let done = 0;
  return rows.flatMap((row) => gapsOfRow(row, bench, () => onProgress(++done, of)));
};
