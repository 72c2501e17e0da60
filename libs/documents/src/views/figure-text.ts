import { formatNumber, formatQuantity, type Kind, type Rounding, thinSpace } from '@flangewise/quantities';

interface Reading {
  readonly kind: Kind;
  readonly unit?: string;
  /** A finer unit below a value in SI. */
  readonly fine?: { readonly below: number; readonly unit: string };
}

/** How the unit of a result or of a step is read by people, by its UCUM code. */
const readings: Readonly<Record<string, Reading>> = {
  Pa: { kind: 'pressure' },
  K: { kind: 'temperature' },
  m3: { kind: 'volume', fine: { below: 1e-4, unit: 'mL' } },
  m: { kind: 'length' },
  m2: { kind: 'area', unit: 'm2', fine: { below: 0.01, unit: 'mm2' } },
  'Pa.s': { kind: 'viscosity' },
  'N.m': { kind: 'torque' },
  N: { kind: 'force', fine: { below: 1000, unit: 'N' } },
  W: { kind: 'power', fine: { below: 1000, unit: 'W' } },
  kg: { kind: 'mass' },
  '/s': { kind: 'speed' },
  '1/s': { kind: 'speed' },
  s: { kind: 'time', fine: { below: 120, unit: 's' } },
  'mol/s': { kind: 'amountFlow' },
  'm3/s': { kind: 'volumeFlow' },
};

const superscripts: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };

/** A UCUM code as it is printed: `W/(m2.K)` → "W/(m²·K)". */
export const unitText = (code: string): string =>
  code === '1'
    ? ''
    : code
        .replace(
          /([A-Za-z])([234])(?!\d)/g,
          (_, letter: string, power: string) => letter + (superscripts[power] ?? power),
        )
        .replaceAll('.', '·')
        .replace(/^\//, '1/')
        .replace('Cel', '°C');

/** A figure of a check in the unit of the trade; pressures are gauge and say so. Words stay words. */
export const figureText = (value: number | string, unit: string, rounding: Rounding = 'nearest'): string => {
  if (typeof value === 'string') return value;
  const reading = readings[unit];
  if (reading === undefined) {
    const label = unitText(unit);
    return `${formatNumber(value, 3, rounding)}${label === '' ? '' : thinSpace + label}`;
  }
  const fine = reading.fine !== undefined && Math.abs(value) < reading.fine.below && value !== 0;
  const chosen = fine ? reading.fine?.unit : reading.unit;
  return formatQuantity(value, reading.kind, { rounding, ...(chosen === undefined ? {} : { unit: chosen }) });
};

/** A difference of two figures: of temperatures in K, of pressures in bar without gauge or absolute; with its sign. */
export const differenceText = (value: number, unit: string): string => {
  const text =
    unit === 'K'
      ? formatQuantity(value, 'temperatureDifference', { rounding: 'down' })
      : figureText(value, unit, 'down').replace('(g)', '');
  return value > 0 ? `+${text}` : value === 0 ? `±${text}` : text;
};

/** A number of a step: four digits, so that a reader who redoes it by hand can follow the third. */
export const stepValueText = (value: number | string, unit: string): string => {
  const label = unitText(unit);
  if (typeof value === 'string') return value;
  const size = Math.abs(value);
  const number = value !== 0 && (size >= 1e7 || size < 1e-6) ? powerText(value) : formatNumber(value, 4);
  return `${number}${label === '' ? '' : thinSpace + label}`;
};

/** 0.000000123 → "1.23 · 10^−7". */
export const powerText = (value: number, digits = 4): string => {
  const [mantissa = '0', exponent = '0'] = value.toExponential(digits - 1).split('e');
  const minus = (text: string): string => text.replace('-', '−');
  return `${minus(String(Number(mantissa)))}${thinSpace}·${thinSpace}10^${minus(String(Number(exponent)))}`;
};
