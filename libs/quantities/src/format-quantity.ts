import { gaugeToAbsolute } from './pressure.js';
import { findUnit, fromSi, type Kind, units } from './units.js';

/** Which way a figure may err: a limit is shown lower, a demand higher, never the other way round. */
export type Rounding = 'nearest' | 'down' | 'up';

export interface FormatOptions {
  /** Unit by UCUM code, label or typed name; the customary one when absent. */
  readonly unit?: string;
  readonly significantDigits?: number;
  readonly rounding?: Rounding;
  /** Pressures only; values are gauge. */
  readonly reference?: 'gauge' | 'absolute';
}

/** The unit in which people of the trade read each kind. */
export const customaryUnit: Readonly<Record<Kind, string>> = {
  amountFlow: 'mol/min',
  area: 'm2',
  density: 'kg/m3',
  force: 'kN',
  length: 'mm',
  mass: 'kg',
  massFlow: 'kg/h',
  molarConcentration: 'mol/L',
  molarEnergy: 'kJ/mol',
  power: 'kW',
  pressure: 'bar',
  ratio: '%',
  speed: '/min',
  temperature: 'Cel',
  temperatureDifference: 'K',
  time: 'min',
  torque: 'N.m',
  viscosity: 'mPa.s',
  volume: 'L',
  volumeFlow: 'L/min',
};

/** Thin space that never breaks, between number and unit and between thousands. */
export const thinSpace = '\u2009\u2060';

const roundAt = (value: number, decimals: number, rounding: Rounding): number => {
  const scale = 10 ** decimals;
  const scaled = Number((value * scale).toPrecision(12));
  const whole =
    rounding === 'nearest'
      ? Math.round(scaled)
      : rounding === 'down'
        ? Math.floor(scaled)
        : Math.ceil(scaled);
  return whole / scale;
};

/** A number with at most `significantDigits` digits, a true minus and thin spaces between thousands. */
export const formatNumber = (
  value: number,
  significantDigits = 3,
  rounding: Rounding = 'nearest',
): string => {
  if (!Number.isFinite(value)) return '–';
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.max(0, significantDigits - 1 - magnitude);
  const rounded = roundAt(value, Math.min(decimals, 12), rounding);
  const [whole = '0', fraction] = Math.abs(rounded).toFixed(Math.min(decimals, 12)).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+(?!\d))/g, thinSpace) : whole;
  const kept = fraction?.replace(/0+$/, '') ?? '';
  return `${rounded < 0 ? '−' : ''}${grouped}${kept === '' ? '' : `.${kept}`}`;
};

/** A quantity for people: value in SI (pressures gauge) → "60 bar(g)", "150 °C". */
export const formatQuantity = (si: number, kind: Kind, options: FormatOptions = {}): string => {
  const unit = findUnit(kind, options.unit ?? customaryUnit[kind]) ?? units[kind][0];
  const absolute = kind === 'pressure' && options.reference === 'absolute';
  const value = fromSi(kind, absolute ? gaugeToAbsolute(si) : si, unit);
  const number = formatNumber(value, options.significantDigits ?? 3, options.rounding ?? 'nearest');
  const reference = kind === 'pressure' ? (absolute ? '(a)' : '(g)') : '';
  return unit.label === '' ? number : `${number}${thinSpace}${unit.label}${reference}`;
};
