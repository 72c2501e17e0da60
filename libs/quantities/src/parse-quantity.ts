import { absoluteToGauge } from './pressure.js';
import { readNumber } from './read-number.js';
import { findUnit, type Kind, toSi, type Unit, units } from './units.js';

/** How a pressure was meant: said to be gauge or absolute, or left unsaid (then read as gauge). */
export type PressureReference = 'gauge' | 'absolute' | 'unsaid';

export interface Quantity {
  readonly kind: Kind;
  /** In the SI unit of the kind; a pressure is gauge [Pa]. */
  readonly si: number;
  /** As it was given, in `unit`. */
  readonly given: number;
  readonly unit: Unit;
  readonly reference?: PressureReference;
}

export interface QuantityTrouble {
  readonly code:
    | 'QUANTITY_NOT_A_NUMBER'
    /** The number can be read in two ways. */
    | 'QUANTITY_AMBIGUOUS'
    | 'QUANTITY_NO_UNIT'
    | 'QUANTITY_WRONG_UNIT'
    | 'QUANTITY_IMPOSSIBLE';
  readonly given: string;
  /** What is allowed: units by label, or the physical bound. */
  readonly allowed: string;
  readonly message: string;
}

export type QuantityOutcome =
  { readonly ok: true; readonly value: Quantity } | { readonly ok: false; readonly error: QuantityTrouble };

const trouble = (code: QuantityTrouble['code'], given: string, allowed: string): QuantityOutcome => {
  const messages: Record<QuantityTrouble['code'], string> = {
    QUANTITY_NOT_A_NUMBER: `"${given}" has no number that can be read; write a number and a unit, one of: ${allowed}`,
    QUANTITY_AMBIGUOUS: `"${given}" has a comma that can be read in two ways, ${allowed}`,
    QUANTITY_NO_UNIT: `"${given}" has no unit; allowed: ${allowed}`,
    QUANTITY_WRONG_UNIT: `"${given}" has a unit that does not fit; allowed: ${allowed}`,
    QUANTITY_IMPOSSIBLE: `"${given}" is physically impossible; allowed: ${allowed}`,
  };
  return { ok: false, error: { code, given, allowed, message: messages[code] } };
};

const labels = (kind: Kind): string =>
  units[kind]
    .map((u) => u.label)
    .filter((label) => label !== '')
    .join(', ') + (kind === 'pressure' ? ' (each with (g) for gauge or (a) for absolute)' : '');

const readReference = (unitText: string): { unitText: string; reference: PressureReference } => {
  const bracket = /^(.*?)\s*\(?\s*(g|gauge|a|abs|absolute)\s*\)?$/iu.exec(unitText);
  const base = bracket?.[1];
  if (bracket === null || base === undefined || base === '' || findUnit('pressure', unitText) !== undefined) {
    return { unitText, reference: 'unsaid' };
  }
  return {
    unitText: base,
    reference: (bracket[2] ?? '').toLowerCase().startsWith('g') ? 'gauge' : 'absolute',
  };
};

/** Physical bound of each kind in SI; nothing below it exists. */
const isImpossible = (quantity: Quantity): string | undefined => {
  if (quantity.kind === 'temperature' && quantity.si < 0) return 'above absolute zero (−273.15 °C, 0 K)';
  if (quantity.kind === 'pressure' && quantity.si < absoluteToGauge(0) - 1e-6) return 'at or above 0 bar(a)';
  const signed: readonly Kind[] = ['temperature', 'pressure', 'molarEnergy', 'temperatureDifference'];
  if (!signed.includes(quantity.kind) && quantity.si < 0) return 'zero or above';
  return undefined;
};

const build = (kind: Kind, number: number, unitText: string): QuantityOutcome => {
  const given = `${String(number)} ${unitText}`.trim();
  if (!Number.isFinite(number)) return trouble('QUANTITY_NOT_A_NUMBER', given, labels(kind));
  const { unitText: base, reference } =
    kind === 'pressure' ? readReference(unitText) : { unitText, reference: undefined };
  if (base === '' && kind !== 'ratio') return trouble('QUANTITY_NO_UNIT', given, labels(kind));
  const unit = base === '' ? units.ratio[0] : findUnit(kind, base);
  if (unit === undefined) return trouble('QUANTITY_WRONG_UNIT', given, labels(kind));
  const si = toSi(kind, number, unit);
  const quantity: Quantity = {
    kind,
    si: reference === 'absolute' ? absoluteToGauge(si) : si,
    given: number,
    unit,
    ...(reference === undefined ? {} : { reference }),
  };
  const bound = isImpossible(quantity);
  return bound === undefined ? { ok: true, value: quantity } : trouble('QUANTITY_IMPOSSIBLE', given, bound);
};

/** Signs without width that come along when a formatted quantity is copied. */
const withoutWidth = /[\u200b\u2060\ufeff]/g;

/** A quantity as a person types it: "60 bar", "870 psi", "1,5 l", "−20 °C", "14 bar(a)", "600 1/min". */
export const parseQuantity = (text: string, kind: Kind): QuantityOutcome => {
  const read = readNumber(text.replace(withoutWidth, ''));
  if (read.as === 'nothing') return trouble('QUANTITY_NOT_A_NUMBER', text, labels(kind));
  if (read.as === 'either') {
    const [fraction, thousands] = read.readings.map(String) as [string, string];
    return trouble(
      'QUANTITY_AMBIGUOUS',
      text,
      `${fraction} or ${thousands}: write ${thousands} or ${fraction}`,
    );
  }
  return build(kind, read.value, read.rest);
};

/** A quantity from data, with a UCUM code or a typed unit. */
export const quantityOf = (value: number, unit: string, kind: Kind): QuantityOutcome =>
  build(kind, value, unit);
