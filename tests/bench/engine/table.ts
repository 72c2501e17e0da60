import type { SizeName } from './catalogue.js';
import type { Time } from './engine-run.js';
import type { ShapeName } from './make-problem.js';
import type { Plan } from './plan.js';
import { quantile, type Record, type Results } from './results.js';
import type { PeerName } from './subject.js';

interface Row {
  readonly what: string;
  readonly goal?: number;
  readonly unit: string;
  /** What the goal is held against. */
  readonly judged: 'median' | 'p95';
  readonly own: readonly Time[];
  readonly peer: (subject: PeerName) => readonly Time[];
  readonly browser: readonly Time[];
}

const goals: {
  [size in SizeName]: { load: number; propagation: number; edit: number; best: number; memory: number };
} = {
  S: { load: 500, propagation: 0.1, edit: 2, best: 2, memory: 50 },
  M: { load: 500, propagation: 1, edit: 16, best: 500, memory: 200 },
  L: { load: 2000, propagation: 5, edit: 100, best: 5000, memory: 500 },
};

const MEGABYTE = 1e6;
const none = (): readonly Time[] => [];

function rowsOf({ size }: Plan, records: readonly Record[]): Row[] {
  const goal = goals[size];
  const runs = records.map((r) => r.engine);
  const of = (read: (run: NonNullable<(typeof runs)[number]>) => readonly Time[]): readonly Time[] =>
    runs.flatMap((run) => (run ? read(run) : [null]));
  const inBrowser = (read: (run: NonNullable<Record['browser']>) => readonly Time[]): readonly Time[] =>
    records.flatMap((r) => (r.browser ? read(r.browser) : []));
  const peer =
    (step: 'load' | 'edit' | 'best', count: number) =>
    (subject: PeerName): readonly Time[] =>
      records.flatMap((r) => {
        const steps = r.peers.find((p) => p.subject === subject)?.steps;
        if (!steps) return [];
        const times: Time[] = steps.filter((s) => s.step === step).map((s) => s.time);
        // What was not reached in time counts as not proved.
        return [...times, ...Array.from({ length: count - times.length }, () => null)];
      });
  const editCount = Math.max(...runs.map((run) => run?.run.shared.length ?? 0), 0);
  const time = { unit: 'ms', judged: 'median' as const };
  const memory = { unit: 'MB', judged: 'p95' as const, peer: none, browser: [] };
  return [
    {
      ...{ ...time, what: 'load', goal: goal.load, own: of(({ run }) => [run.load]), peer: peer('load', 1) },
      browser: inBrowser((run) => [run.load]),
    },
    {
      ...{ ...time, what: 'first valid options', own: of(({ run }) => [run.first]), peer: none },
      browser: inBrowser((run) => [run.first]),
    },
    {
      ...{ ...time, what: 'local propagation after an edit', goal: goal.propagation, peer: none },
      ...{ own: of(({ run }) => run.propagation), browser: inBrowser((run) => run.propagation) },
    },
    {
      ...{ ...time, what: 'valid options after an edit', goal: goal.edit, judged: 'p95', peer: none },
      ...{ own: of(({ run }) => run.edits), browser: inBrowser((run) => run.edits) },
    },
    {
      ...{ ...time, what: 'valid options after edits 1, 3, 6', peer: peer('edit', editCount) },
      own: of(({ run }) => run.shared.map((s) => s.time)),
      browser: inBrowser((run) => run.shared.map((s) => s.time)),
    },
    {
      ...{ ...time, what: 'cheapest, with proof, first asked', own: of(({ run }) => [run.bestFirst]) },
      ...{ peer: none, browser: inBrowser((run) => [run.bestFirst]) },
    },
    {
      ...{ ...time, what: 'cheapest, with proof', goal: goal.best, own: of(({ run }) => [run.best]) },
      ...{ peer: peer('best', 1), browser: inBrowser((run) => [run.best]) },
    },
    {
      ...{
        ...time,
        what: 'cheapest after edits 1, 3, 6',
        own: of(({ run }) => run.bestAfterEdits),
        peer: none,
      },
      browser: inBrowser((run) => run.bestAfterEdits),
    },
    { ...memory, what: 'memory kept', goal: goal.memory, own: of(({ kept }) => [kept / MEGABYTE]) },
    { ...memory, what: 'memory, peak of the process', own: of(({ grown }) => [grown / MEGABYTE]) },
  ];
}

const number = (time: Time | undefined): string => {
  if (time === undefined) return '';
  if (time === null) return 'not proved';
  return time >= 100 ? time.toFixed(0) : time >= 1 ? time.toFixed(1) : time.toFixed(3);
};

/** How many times as long the faster peer takes. */
function ratio(row: Row): string {
  const own = quantile(row.own, 0.5);
  const peers = (['logic-solver', 'z3-solver'] as const)
    .map((p) => quantile(row.peer(p), 0.5))
    .filter((t) => t !== undefined);
  if (own === undefined || own === null || peers.length === 0) return '';
  const best = Math.min(...peers.map((t) => t ?? Infinity));
  return best === Infinity ? 'none proved' : `${(best / own).toFixed(0)}×`;
}

const widths = [-38, 10, 12, 12, 8, 14, 14, 13, 12];

const line = (cells: readonly string[]): string =>
  cells
    .map((cell, i) => ((widths[i] ?? 0) < 0 ? cell.padEnd(-(widths[i] ?? 0)) : cell.padStart(widths[i] ?? 0)))
    .join('');

function show(row: Row): string {
  const median = quantile(row.own, 0.5);
  const p95 = quantile(row.own, 0.95);
  const value = row.judged === 'p95' ? p95 : median;
  const isMet = value !== undefined && value !== null && value <= (row.goal ?? Infinity);
  return line([
    `${row.what} [${row.unit}]`,
    row.goal === undefined ? '' : `${String(row.goal)}${row.judged === 'p95' ? ' p95' : ''}`,
    ...[number(median), number(p95)],
    row.goal === undefined ? '' : isMet ? 'met' : 'MISSED',
    number(quantile(row.peer('logic-solver'), 0.5)),
    number(quantile(row.peer('z3-solver'), 0.5)),
    ratio(row),
    number(quantile(row.browser, row.judged === 'p95' ? 0.95 : 0.5)),
  ]);
}

const shapeTitles: { [shape in ShapeName]: string } = {
  plain: '24 slots, 60 rules, ports',
  full: 'two vessel sets, 140 rules, ports, sums',
};

/** Goal, median and 95th percentile of the engine, medians of the peers, and the engine in a browser. */
export function tableOf(results: Results): string {
  const head = ['', 'goal', 'median', 'p95', '', 'logic-solver', 'z3-solver', 'faster peer', 'browser'];
  const lines = [...results].flatMap(([plan, records]) => {
    const items = records.find((r) => r.engine)?.engine?.run.items;
    const seeds = records.map((r) => r.seed).join(' ');
    return [
      '',
      `${plan.size}: ${String(items ?? '?')} options; ${shapeTitles[plan.shape]}; seeds ${seeds}`,
      line(head),
      ...rowsOf(plan, records).map(show),
    ];
  });
  return lines.join('\n');
}
