import { findUnit, fromSi, type Kind, toSi, type Unit, units } from '@flangewise/quantities';
import type { SlotName } from './slot.js';

/** How a number of an item is shown to people and read from them. */
export interface ShownUnit {
  /** "mm", "bar(g)", "d". */
  readonly label: string;
  /** How it is converted; undefined where it is shown in the unit in which it is held. */
  readonly conversion?: {
    readonly kind: Kind;
    readonly held: Unit;
    readonly shown: Unit;
  };
}

/** Of each unit in which items hold numbers: what it measures, and the unit in which people of the trade read it. */
const customs: Readonly<Record<string, readonly [kind: Kind, shown: string]>> = {
  Pa: ['pressure', 'bar'],
  K: ['temperature', 'Cel'],
  m: ['length', 'mm'],
  mm: ['length', 'mm'],
  m2: ['area', 'm2'],
  kg: ['mass', 'kg'],
  W: ['power', 'W'],
  N: ['force', 'kN'],
  'N.m': ['torque', 'N.m'],
  s: ['time', 's'],
  '/s': ['speed', '/min'],
  'Pa.s': ['viscosity', 'mPa.s'],
  L: ['volume', 'L'],
  'm3/s': ['volumeFlow', 'L/min'],
  'm3/h': ['volumeFlow', 'm3/h'],
  'kg/m3': ['density', 'kg/m3'],
};

/** Where the trade reads something else than the unit suggests, by the key of the field. */
const exceptions: Readonly<Record<string, readonly [kind: Kind, shown: string]>> = {
  thermalShockK: ['temperatureDifference', 'K'],
  seatingStressPa: ['pressure', 'MPa'],
};
const exceptionsOfSlots: Readonly<Partial<Record<SlotName, typeof exceptions>>> = {
  relief: { areaM2: ['area', 'mm2'] },
};

/** Labels of units that nobody converts. */
const plainLabels: Readonly<Record<string, string>> = { deg: '°', 'J/(kg.K)': 'J/(kg·K)' };

const unitOf = (kind: Kind, code: string): Unit => findUnit(kind, code) ?? units[kind][0];

export interface HeldNumber {
  readonly slot: SlotName;
  readonly key: string;
  /** Unit in which items hold it; "1" for none. */
  readonly unit: string;
}

/** The unit in which people read a number of an item; undefined for a plain number. */
export const shownUnitOf = ({ slot, key, unit }: HeldNumber): ShownUnit | undefined => {
  if (unit === '1') return undefined;
  const custom = exceptionsOfSlots[slot]?.[key] ?? exceptions[key] ?? customs[unit];
  if (custom === undefined) return { label: plainLabels[unit] ?? unit };
  const [kind, code] = custom;
  const shown = unitOf(kind, code);
  return {
    label: key.endsWith('PaGauge') ? `${shown.label}(g)` : shown.label,
    conversion: { kind, held: unitOf(kind, unit), shown },
  };
};

/** A held number in the unit in which people read it. */
export const toShown = (held: number, unit: ShownUnit | undefined): number => {
  const { conversion } = unit ?? {};
  if (conversion === undefined || conversion.held.code === conversion.shown.code) return held;
  return fromSi(conversion.kind, toSi(conversion.kind, held, conversion.held), conversion.shown);
};

/** A number of any unit of the kind as items hold it; exactly as given where the units are the same. */
export const toHeld = (
  given: number,
  from: Unit,
  conversion: NonNullable<ShownUnit['conversion']>,
): number =>
  from.code === conversion.held.code
    ? given
    : fromSi(conversion.kind, toSi(conversion.kind, given, from), conversion.held);
