export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  /** Where a value stands, 0 to 1. */
  readonly at: (value: number) => number;
}

const steps = [1, 2, 5, 10];

export interface ScaleOptions {
  /** About how many steps. */
  readonly count: number;
  /** Smaller differences than this are not drawn out. */
  readonly least: number;
  /** Where the scale starts; below the lowest value unless given. */
  readonly from?: number;
}

/** Values keep this share of their span from the ends. */
const room = 0.06;

const stepFor = (span: number, count: number): number => {
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * (steps.find((s) => s * power >= rough) ?? 10);
};

/** A scale with round ticks that holds all values, none of them at an end. */
export const scaleOver = (values: readonly number[], options: ScaleOptions): Scale => {
  const low = options.from ?? Math.min(...values);
  const high = Math.max(low, ...values);
  const span = Math.max(high - low, options.least * options.count);
  const step = stepFor(span, options.count);
  const from = options.from ?? Math.floor((low - room * span) / step) * step;
  const to = from + Math.max(1, Math.ceil((high + room * span - from) / step)) * step;
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, k) => from + k * step);
  return { from, to, ticks, at: (value) => (value - from) / (to - from) };
};
