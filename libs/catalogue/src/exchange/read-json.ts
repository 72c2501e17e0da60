import type { Catalogue } from '@flangewise/model';
import { findNodeAtLocation, type Node, type ParseError, parseTree } from 'jsonc-parser';
import { itemById } from '../find-items.js';
import { readCatalogue } from '../read-catalogue.js';
import type { ImportReport } from './import-report.js';
import { keepsSlot } from './keeps-slot.js';
import { mergedReport, refusedReport } from './merge.js';
import { TroubleLog } from './trouble-log.js';

/** Where lines begin, to tell in which one something stands. */
class Lines {
  readonly #starts: readonly number[];

  constructor(text: string) {
    const starts = [0];
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
    this.#starts = starts;
  }

  at(offset: number): number {
    let [low, high] = [0, this.#starts.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#starts[middle] ?? 0) <= offset) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

const keysOf = (path: string): (string | number)[] =>
  [...path.matchAll(/\[(\d+)\]|[^.[\]]+/g)].map(([text, index]) =>
    index === undefined ? text : Number(index),
  );

/** The nearest thing around a path that stands in the document: what is missing stands nowhere. */
const offsetOf = (root: Node | undefined, path: string): number => {
  if (root === undefined) return 0;
  for (let keys = keysOf(path); keys.length > 0; keys = keys.slice(0, -1)) {
    const node = findNodeAtLocation(root, keys);
    if (node !== undefined) return node.offset;
  }
  return root.offset;
};

const decoded = (bytes: Uint8Array): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

/** Reads the document of a catalogue: its items, price lists and tables are put over those that there are, by their numbers. */
export const readJson = (bytes: Uint8Array, catalogue: Catalogue): ImportReport => {
  const log = new TroubleLog();
  const text = decoded(bytes);
  if (text === undefined || text.trim() === '') {
    log.add({
      line: 1,
      column: '',
      given: text === undefined ? 'bytes that are no UTF-8' : 'nothing',
      message: 'give the document of a catalogue as JSON in UTF-8, as an export has it',
    });
    return refusedReport(0, log);
  }
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch {
    const lines = new Lines(text);
    const errors: ParseError[] = [];
    parseTree(text, errors);
    const [first] = errors;
    log.add({
      line: lines.at(first?.offset ?? text.length),
      column: '',
      given: text.slice(first?.offset ?? 0, (first?.offset ?? 0) + 20),
      message: 'the document is no JSON from here on; mend it, or export it again',
    });
    return refusedReport(0, log);
  }
  const read = readCatalogue(document);
  if (!read.ok) {
    const root = parseTree(text);
    const lines = new Lines(text);
    for (const { path, given, message } of read.error)
      log.add({ line: lines.at(offsetOf(root, path)), column: path, given, message });
    const { items } = (document ?? {}) as { items?: unknown };
    return refusedReport(Array.isArray(items) ? items.length : 0, log);
  }
  const { items, priceLists, revision: _revision, maker: _maker, ...rest } = read.value;
  items.forEach(({ id, slot }, i) => {
    const known = itemById(catalogue, id);
    if (known === undefined || known.slot === slot) return;
    const path = `items[${String(i)}].slot`;
    log.add({
      line: new Lines(text).at(offsetOf(parseTree(text), path)),
      column: path,
      given: slot,
      message: keepsSlot(known),
    });
  });
  if (!log.isEmpty) return refusedReport(items.length, log);
  const incoming = {
    items: new Map(items.map((item) => [item.id, item])),
    prices: new Map(),
    priceLists,
    rest,
  };
  return { ...mergedReport(catalogue, { incoming, log }), rows: items.length };
};
