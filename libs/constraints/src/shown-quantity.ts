import { formatQuantity, formatNumber, type Kind, type Rounding, thinSpace } from '@flangewise/quantities';

/** How a UCUM unit of a result is read by people. */
const readings: Readonly<Record<string, { readonly kind: Kind; readonly unit?: string }>> = {
  Pa: { kind: 'pressure' },
  K: { kind: 'temperature' },
  m3: { kind: 'volume' },
  m: { kind: 'length' },
  m2: { kind: 'area' },
  'Pa.s': { kind: 'viscosity' },
  'N.m': { kind: 'torque' },
  N: { kind: 'force' },
  W: { kind: 'power' },
  kg: { kind: 'mass' },
  '/s': { kind: 'speed' },
  s: { kind: 'time' },
  'mol/s': { kind: 'amountFlow' },
};

/** Figures come again and again while rules are tabulated: their texts are kept, up to so many. */
const mostKept = 20_000;
const kept = new Map<string, string>();

/** A figure of a result for people, in the trade's unit: 1850000 Pa → "18.5 bar(g)". Limits are rounded down, demands up. */
export const shownQuantity = (value: number, unit: string, rounding: Rounding = 'nearest'): string => {
  const key = `${String(value)} ${unit} ${rounding}`;
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= mostKept) kept.clear();
  const text = worded(value, unit, rounding);
  kept.set(key, text);
  return text;
};

const worded = (value: number, unit: string, rounding: Rounding): string => {
  const reading = readings[unit];
  if (reading !== undefined) {
    const small = reading.kind === 'area' && value < 0.01 ? { unit: 'mm2' } : {};
    const watts = reading.kind === 'power' && Math.abs(value) < 1000 ? { unit: 'W' } : {};
    return formatQuantity(value, reading.kind, { rounding, ...small, ...watts });
  }
  const number = formatNumber(value, 3, rounding);
  return unit === '1' || unit === '' ? number : `${number}${thinSpace}${unit}`;
};

/** Temperature differences are not points on the scale. */
export const shownDifference = (kelvin: number, rounding: Rounding = 'nearest'): string =>
  formatQuantity(kelvin, 'temperatureDifference', { rounding });
