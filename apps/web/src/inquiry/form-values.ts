import type { InquiryInput } from '@flangewise/model';
import { readNumber } from '@flangewise/quantities';

/** Yes, no, or nobody said. */
export type Said = '' | 'yes' | 'no';

interface Span {
  lowest?: string;
  usual?: string;
  highest?: string;
}

export interface MediumValues {
  substance?: string;
  role?: string;
  massFraction?: string;
  solvent?: string;
  dry?: Said;
}

export interface SetValues {
  label?: string;
  count?: string;
  batchVolume?: string;
  vesselVolume?: string;
  statedVolume?: string;
  pressure?: Span;
  temperature?: Span;
  construction?: string;
  material?: string;
}

/** An inquiry while it is typed: text as it stands in the fields, at the paths of the document. */
export interface FormValues {
  title?: string;
  client?: string;
  contact?: string;
  received?: string;
  statement?: string;
  arrangement?: string;
  process: {
    kind?: string;
    media: MediumValues[];
    pressure?: Span;
    pressureMeans?: string;
    vacuum?: Said;
    temperature?: Span;
    viscosity?: { start?: string; end?: string };
    density?: string;
    solids?: { massFraction?: string; particleSize?: string; density?: string };
    stirringSpeed?: Span;
    foaming?: Said;
    exothermic?: Said;
    selfReactive?: Said;
    heatOfReaction?: string;
    heatOfReactionPer?: string;
    concentration?: string;
    peakUptake?: string;
    calorimetry?: Said;
    regulatorKv?: string;
    supplyPressure?: string;
    heatUpTime?: string;
  };
  sets: SetValues[];
  site: {
    country?: string;
    zone?: string;
    zoneGas?: string;
    ceilingHeight?: string;
    coolingWater?: Said;
  };
  requirements: Record<string, boolean | string | string[] | Record<string, string> | undefined>;
  commercial: { currency?: string; budget?: string; deliveryWeeks?: string; endUse?: string };
}

/** Numbers without a unit, at the end of their path. */
const numberFields = /(?:^|\.)(?:regulatorKv|openingsPerDay|deliveryWeeks|count)$/;
/** Booleans of which "no" means something else than silence. */
const saidFields = /(?:^|\.)(?:vacuum|foaming|exothermic|selfReactive|calorimetry|coolingWater|dry)$/;

type Json = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isGiven = (value: Json): value is { value: number; unit: string } =>
  typeof value['value'] === 'number' && typeof value['unit'] === 'string';

const textOf = (value: unknown, path: string): unknown => {
  if (Array.isArray(value)) return value.map((one, i) => textOf(one, `${path}.${String(i)}`));
  if (isRecord(value)) {
    if (isGiven(value)) return `${String(value.value)} ${value.unit}`;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, textOf(one, path === '' ? key : `${path}.${key}`)]),
    );
  }
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean' && saidFields.test(path)) return value ? 'yes' : 'no';
  return value;
};

/** The fields as they show a document. */
export const formOf = (document: Partial<InquiryInput>): FormValues => {
  const values = textOf(document, '') as Partial<FormValues>;
  return {
    ...values,
    process: { ...values.process, media: values.process?.media ?? [] },
    sets: values.sets ?? [{}],
    site: values.site ?? {},
    requirements: values.requirements ?? {},
    commercial: values.commercial ?? {},
  };
};

const leafOf = (value: unknown, path: string): unknown => {
  if (typeof value === 'boolean') return value ? true : undefined;
  if (typeof value !== 'string') return value;
  const text = value.trim();
  if (text === '') return undefined;
  if (saidFields.test(path)) return text === 'yes';
  if (!numberFields.test(path)) return text;
  // What may be read two ways stays as it was typed: the check of the document says so.
  const number = readNumber(text);
  return number.as === 'number' && number.rest === '' ? number.value : text;
};

const valueOf = (value: unknown, path: string): unknown => {
  if (Array.isArray(value))
    return value.length === 0 && !/(?:media|sets)$/.test(path)
      ? undefined
      : value.map((one, i) => valueOf(one, `${path}.${String(i)}`) ?? {});
  if (!isRecord(value)) return leafOf(value, path);
  const entries = Object.entries(value)
    .map(([key, one]) => [key, valueOf(one, path === '' ? key : `${path}.${key}`)] as const)
    .filter(([, one]) => one !== undefined);
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
};

/** The document that the fields say; empty fields stay out. Not yet checked: give it to `readDocument`. */
export const documentOf = (values: FormValues): unknown => {
  const document = (valueOf(values, '') ?? {}) as Json;
  return { ...document, title: document['title'] ?? '' };
};

/** Whether a field at this path takes a number without a unit. */
export const isNumberField = (path: string): boolean => numberFields.test(path);
