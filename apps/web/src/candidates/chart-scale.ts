export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  /** Where a value stands, 0 to 1. */
  readonly at: (value: number) => number;
}

const steps = [1, 2, 5, 10];

const stepFor = (span: number, count: number): number => {
  const rough = span / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * (steps.find((s) => s * power >= rough) ?? 10);
};

/** A scale with round ticks that holds all values. */
export const scaleOver = (values: readonly number[], count: number): Scale => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const step = stepFor(high === low ? Math.max(1, Math.abs(high) / 5) : high - low, count);
  const from = Math.floor(low / step) * step - (low % step === 0 ? step : 0);
  const to = Math.ceil(high / step) * step + (high % step === 0 ? step : 0);
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, k) => from + k * step);
  return { from, to, ticks, at: (value) => (value - from) / (to - from) };
};
