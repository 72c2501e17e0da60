import { type OpenPoint, readDocument, succeed, type System, systemSchema } from '@flangewise/model';
import type { Bench } from '@flangewise/constraints';
import type { Request } from '../command.js';
import { openRange, type OpenRange } from '../range/open-range.js';
import { openPointsNote } from '../text/open-points.js';
import { invalidFields, type OrRefusal, refuse } from '../trouble.js';
import { checkInquiry, isInquiryDocument, isSystemDocument } from './read-inquiry.js';
import { readJson } from './read-json.js';
import { mediumNotes } from './medium-notes.js';

/** A system that fits its schema and the range, with a bench that has its specials. */
export interface OpenSystem {
  readonly system: System;
  /** The same as it was typed. */
  readonly document: unknown;
  /** What it is called above its answer. */
  readonly title: string;
  readonly range: OpenRange;
  readonly bench: Bench;
  /** What an inquiry leaves open; of a system its assessment tells. */
  readonly openPoints: readonly OpenPoint[];
  readonly notes: readonly string[];
}

export interface ReadSystemOptions {
  /** An inquiry counts as a system without choices. */
  readonly orInquiry?: boolean;
  /** Fields of the offer that were given on the command line; they replace what the system says. */
  readonly offer?: Readonly<Record<string, string>>;
  /** Date of the offer where nobody says one. */
  readonly offerDate?: string;
}

/** The document with the fields of its offer replaced; the schema judges them as if they had stood there. */
const withOffer = (document: unknown, { offer, offerDate }: ReadSystemOptions): unknown => {
  if (offer === undefined || !isSystemDocument(document)) return document;
  const system = document as { readonly offer?: object };
  return {
    ...system,
    offer: { ...(offerDate === undefined ? {} : { date: offerDate }), ...system.offer, ...offer },
  };
};

const parseSystem = async (
  document: unknown,
  { orInquiry = false }: ReadSystemOptions,
): Promise<OrRefusal<System>> => {
  if (orInquiry && !isSystemDocument(document)) {
    const inquiry = checkInquiry(document);
    if (!inquiry.ok) return inquiry;
    const { openSystem } = await import('@flangewise/constraints');
    return parseSystem(openSystem(inquiry.value), {});
  }
  if (isInquiryDocument(document)) {
    return refuse({
      code: 'INPUT_INVALID',
      message:
        'this document is an inquiry, and this command takes a system; "solve" takes an inquiry, and "solve … --take A" prints a system of it',
    });
  }
  const read = readDocument(systemSchema, document);
  return read.ok ? read : refuse(...invalidFields(read.error));
};

const specialBench = async (system: System, bench: Bench): Promise<OrRefusal<Bench>> => {
  const { benchOf, specialsOf } = await import('@flangewise/constraints');
  const made = specialsOf(system, bench.range);
  if (made.ok) return succeed(benchOf(system, bench));
  const { code, message, field, given } = made.error;
  return refuse({
    code,
    path: field === undefined ? 'specials' : `specials.${field}`,
    message,
    ...(given === undefined ? {} : { given: String(given) }),
  });
};

const revisionNotes = (system: System, range: OpenRange): readonly string[] =>
  system.catalogueRevision === undefined || system.catalogueRevision === range.catalogue.revision
    ? []
    : [
        `The system was made with catalogue ${system.catalogueRevision}; this answer rests on ${range.catalogue.revision}.`,
      ];

/** What the inquiry of a system leaves open before any part is chosen. */
const openPointsOf = async (system: System, bench: Bench): Promise<readonly OpenPoint[]> => {
  const { assess } = await import('@flangewise/constraints');
  return assess(system, bench).openPoints;
};

/** Reads the system named by the first operand and holds it against the range. */
export const readSystem = async (
  { operands, options, terminal }: Request,
  reading: ReadSystemOptions = {},
): Promise<OrRefusal<OpenSystem>> => {
  const given = await readJson(operands[0] ?? '-', terminal);
  if (!given.ok) return given;
  const document = withOffer(given.value, reading);
  const system = await parseSystem(document, reading);
  if (!system.ok) return system;
  const { inquiry } = system.value;
  const range = await openRange(options, system.value, terminal);
  if (!range.ok) return range;
  const bench = await specialBench(system.value, range.value.bench);
  if (!bench.ok) return bench;
  const { choiceTroubles } = await import('@flangewise/catalogue');
  const troubles = choiceTroubles(system.value, bench.value.range.items);
  if (troubles.length > 0)
    return refuse(...troubles.map((one) => ({ ...one, code: `INPUT_${one.code}` as const })));
  const openPoints = isSystemDocument(document) ? [] : await openPointsOf(system.value, bench.value);
  return succeed({
    system: system.value,
    document,
    title: isSystemDocument(document) ? `${inquiry.title}, system ${system.value.name}` : inquiry.title,
    range: range.value,
    openPoints,
    bench: bench.value,
    notes: [
      ...range.value.notes,
      ...revisionNotes(system.value, range.value),
      ...(await mediumNotes(inquiry.process.media)),
      ...(options['json'] === true ? openPointsNote(openPoints) : []),
    ],
  });
};
