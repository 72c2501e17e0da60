import { formatQuantity, type Kind, type Rounding } from '@flangewise/quantities';
import type { Reach } from './furthest.js';
import { type Inquiry, type SlotPath, type System } from '@flangewise/model';
import { shownQuantity } from './shown-quantity.js';

/** A stated number and which way it is easier to meet. */
export interface StatedNumber {
  readonly si: number;
  readonly kind: Kind;
  readonly easier: 'lower' | 'higher';
  /** Below this it makes no sense. */
  readonly floor?: number;
}

/** One thing that somebody said, which can be taken back to see what hangs on it. */
export interface InquiryStatement {
  readonly kind: 'inquiry';
  /** Field of the inquiry, for instance `sets[0].pressure.highest`. */
  readonly path: string;
  readonly text: string;
  readonly value: string;
  /** A number that could be lowered or raised; undefined for a wish. */
  readonly number?: StatedNumber;
  without(system: System): System;
  /** The same statement with another number. */
  with?(system: System, si: number): System;
}

export interface ChoiceStatement {
  readonly kind: 'choice';
  readonly path: SlotPath;
  readonly text: string;
  readonly value: string | null;
  without(system: System): System;
}

export type SystemStatement = InquiryStatement | ChoiceStatement;

type Json = Record<string, unknown>;
type Key = string | number;

const isRecord = (value: unknown): value is Json => typeof value === 'object' && value !== null;

const readAt = (value: unknown, path: readonly Key[]): unknown =>
  path.reduce<unknown>((v, key) => (isRecord(v) ? (v as Record<Key, unknown>)[key] : undefined), value);

/** A copy with one field changed, or left out where `next` is undefined. */
const writeAt = (value: unknown, path: readonly Key[], next: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return next;
  if (Array.isArray(value)) {
    const list: readonly unknown[] = value;
    return list.map((v, k) => (k === key ? writeAt(v, rest, next) : v));
  }
  const record: Json = isRecord(value) ? value : {};
  if (rest.length === 0 && next === undefined) {
    return Object.fromEntries(Object.entries(record).filter(([name]) => name !== String(key)));
  }
  return { ...record, [String(key)]: writeAt(record[String(key)], rest, next) };
};

const withInquiry = (system: System, path: readonly Key[], next: unknown): System => ({
  ...system,
  inquiry: writeAt(system.inquiry, path, next) as Inquiry,
});

const pathText = (path: readonly Key[]): string =>
  path.reduce<string>(
    (t, k) => (typeof k === 'number' ? `${t}[${String(k)}]` : t === '' ? k : `${t}.${k}`),
    '',
  );

interface NumberField {
  readonly path: readonly Key[];
  readonly name: string;
  readonly kind: Kind;
  readonly easier: 'lower' | 'higher';
  /** Below this it makes no sense. */
  readonly floor?: number;
}

const numberFields = (prefix: readonly Key[]): readonly NumberField[] => [
  { path: [...prefix, 'pressure', 'highest'], name: 'pressure', kind: 'pressure', easier: 'lower' },
  {
    path: [...prefix, 'temperature', 'highest'],
    name: 'highest temperature',
    kind: 'temperature',
    easier: 'lower',
  },
  {
    path: [...prefix, 'temperature', 'lowest'],
    name: 'lowest temperature',
    kind: 'temperature',
    easier: 'higher',
  },
];

const processNumbers: readonly NumberField[] = [
  ...numberFields(['process']),
  { path: ['process', 'viscosity', 'end'], name: 'viscosity at the end', kind: 'viscosity', easier: 'lower' },
  {
    path: ['process', 'viscosity', 'start'],
    name: 'viscosity at the start',
    kind: 'viscosity',
    easier: 'lower',
  },
  { path: ['process', 'stirringSpeed', 'highest'], name: 'stirring speed', kind: 'speed', easier: 'lower' },
  {
    path: ['process', 'stirringSpeed', 'lowest'],
    name: 'lowest stirring speed',
    kind: 'speed',
    easier: 'higher',
  },
  { path: ['process', 'peakUptake'], name: 'peak uptake', kind: 'amountFlow', easier: 'lower' },
  { path: ['process', 'supplyPressure'], name: 'supply pressure', kind: 'pressure', easier: 'lower' },
  { path: ['process', 'heatUpTime'], name: 'heating time', kind: 'time', easier: 'higher' },
  { path: ['site', 'ceilingHeight'], name: 'ceiling', kind: 'length', easier: 'higher' },
  { path: ['requirements', 'openingsPerDay'], name: 'openings a day', kind: 'ratio', easier: 'lower' },
];

const setNumbers = (set: number): readonly NumberField[] => [
  { path: ['sets', set, 'count'], name: 'vessels at once', kind: 'ratio', easier: 'lower', floor: 1 },
  { path: ['sets', set, 'batchVolume'], name: 'batch', kind: 'volume', easier: 'lower' },
  { path: ['sets', set, 'vesselVolume'], name: 'vessel volume', kind: 'volume', easier: 'lower' },
  { path: ['sets', set, 'statedVolume'], name: 'volume', kind: 'volume', easier: 'lower' },
  ...numberFields(['sets', set]),
];

interface WishField {
  readonly path: readonly Key[];
  readonly text: (value: unknown) => string;
}

const flag = (path: readonly Key[], text: string): WishField => ({ path, text: () => text });

const processWishes: readonly WishField[] = [
  { path: ['process', 'kind'], text: (v) => `process: ${String(v)}` },
  flag(['process', 'exothermic'], 'reaction that gives heat'),
  flag(['process', 'selfReactive'], 'self-reactive substance'),
  { path: ['process', 'pressureMeans'], text: (v) => `pressure meant as ${String(v)}` },
  flag(['process', 'solids'], 'solids in the batch'),
  { path: ['process', 'regulatorKv'], text: (v) => `regulator with Kv ${String(v)} m³/h` },
  flag(['process', 'vacuum'], 'full vacuum'),
  flag(['process', 'foaming'], 'foaming batch'),
  {
    path: ['process', 'media'],
    text: (v) => `media: ${(v as { substance: string }[]).map((m) => m.substance).join(', ')}`,
  },
  { path: ['site', 'zone'], text: (v) => (v === 'none' ? 'no hazardous area' : `zone ${String(v)}`) },
  { path: ['arrangement'], text: (v) => `sets ${String(v)}` },
  flag(['requirements', 'noMetalContact'], 'no metal may touch the product'),
  flag(['requirements', 'seeInside'], 'view inside'),
  flag(['requirements', 'bottomOutlet'], 'emptied through the bottom'),
  flag(['requirements', 'uptakeRecorded'], 'uptake recorded'),
  flag(['requirements', 'inerting'], 'inerting'),
  flag(['requirements', 'tilt'], 'tilting'),
  flag(['requirements', 'sampling'], 'sampling'),
  flag(['requirements', 'dosingAgainstPressure'], 'dosing against pressure'),
  flag(['requirements', 'refluxCondenser'], 'reflux condenser'),
  flag(['requirements', 'catalystBasket'], 'catalyst basket'),
  { path: ['requirements', 'processProbes'], text: (v) => `probes: ${(v as string[]).join(', ')}` },
  {
    path: ['requirements', 'freePorts'],
    text: (v) => {
      const { count, size } = v as { count: number; size?: number };
      return `${String(count)} free ${count === 1 ? 'port' : 'ports'}${size === undefined ? '' : ` of ${shownQuantity(size, 'm')} or more`}`;
    },
  },
  { path: ['requirements', 'impeller'], text: (v) => `stirrer: ${String(v)}` },
  flag(['requirements', 'materialCertificates'], 'material certificates'),
  flag(['requirements', 'qualificationPapers'], 'qualification papers'),
  { path: ['requirements', 'families'], text: (v) => `family ${(v as string[]).join(' or ')}` },
];

const setWishes = (set: number): readonly WishField[] => [
  { path: ['sets', set, 'construction'], text: (v) => `${String(v)} vessel` },
  { path: ['sets', set, 'material'], text: (v) => `${String(v)} wished for` },
];

/** One vessel is what an inquiry says without saying it. */
const isUnsaid = (si: number, { path }: NumberField): boolean => path.at(-1) === 'count' && si === 1;

const numberStatement = (system: System, field: NumberField): readonly InquiryStatement[] => {
  const si = readAt(system.inquiry, field.path);
  if (typeof si !== 'number' || isUnsaid(si, field)) return [];
  const shown = field.kind === 'ratio' ? String(si) : formatQuantity(si, field.kind, { rounding: 'nearest' });
  return [
    {
      kind: 'inquiry',
      path: pathText(field.path),
      value: shown,
      text: `${field.name} ${shown}`,
      number: {
        si,
        kind: field.kind,
        easier: field.easier,
        ...(field.floor === undefined ? {} : { floor: field.floor }),
      },
      without: (s) => withInquiry(s, field.path, field.path.at(-1) === 'count' ? 1 : undefined),
      with: (s, next) => withInquiry(s, field.path, next),
    },
  ];
};

const wishStatement = (system: System, field: WishField): readonly InquiryStatement[] => {
  const value = readAt(system.inquiry, field.path);
  if (value === undefined || value === false || (Array.isArray(value) && value.length === 0)) return [];
  return [
    {
      kind: 'inquiry',
      path: pathText(field.path),
      value: typeof value === 'string' ? value : JSON.stringify(value),
      text: field.text(value),
      without: (s) =>
        withInquiry(s, field.path, Array.isArray(value) && field.path.includes('media') ? [] : undefined),
    },
  ];
};

/** Everything in an inquiry that can decide for or against a system, in the order in which one would rather keep it. */
export const inquiryStatements = (system: System): readonly InquiryStatement[] => [
  ...processWishes.flatMap((field) => wishStatement(system, field)),
  ...processNumbers.flatMap((field) => numberStatement(system, field)),
  ...system.inquiry.sets.flatMap((_, set) => [
    ...setWishes(set).flatMap((field) => wishStatement(system, field)),
    ...setNumbers(set).flatMap((field) => numberStatement(system, field)),
  ]),
];

/** A limit found by search, shown on its safe side. */
export const shownLimit = (si: number, number: { kind: Kind; easier: 'lower' | 'higher' }): string => {
  const rounding: Rounding = number.easier === 'lower' ? 'down' : 'up';
  return number.kind === 'ratio' ? String(Math.floor(si)) : formatQuantity(si, number.kind, { rounding });
};

const roomK = 293.15;
const smallShare = 1e-3;

/** How far it is worth easing a number: a highest temperature not below the room, anything else to a thousandth. */
export const reachOf = ({ si, kind, easier, floor }: StatedNumber): Reach => ({
  from: si,
  easier,
  floor: floor ?? (kind === 'temperature' ? roomK : si * smallShare),
});
