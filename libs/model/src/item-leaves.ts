import { type ItemField, type ItemShape, itemShapeOf } from './item-fields.js';
import type { Item } from './item.js';
import type { SlotName } from './slot.js';

/** One written field of an item: where it stands and what. */
export interface ItemLeaf {
  readonly field: ItemField;
  /** As items hold it; null only where that is written and not left blank. */
  readonly value: unknown;
}

/** By path, `ports[0].name`: the fields that are written. */
export type ItemLeaves = ReadonlyMap<string, ItemLeaf>;

type Json = Readonly<Record<string, unknown>>;

const under = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** Whether a field that is left blank would be read as this value. */
const isBlank = ({ whenBlank }: ItemField, value: unknown): boolean => {
  if (value === undefined) return true;
  if (typeof whenBlank === 'string') return false;
  const blank = whenBlank.value;
  return (
    (value === null && blank === null) ||
    (Array.isArray(value) && value.length === 0 && Array.isArray(blank) && blank.length === 0)
  );
};

function collect(
  into: Map<string, ItemLeaf>,
  path: string,
  [shape, value]: readonly [ItemShape, unknown],
): void {
  switch (shape.is) {
    case 'field':
      if (!isBlank(shape.field, value)) into.set(path, { field: shape.field, value });
      return;
    case 'group':
      if (typeof value === 'object' && value !== null)
        for (const [key, part] of shape.parts) collect(into, under(path, key), [part, (value as Json)[key]]);
      return;
    case 'several':
      if (Array.isArray(value))
        value.forEach((one, i) => collect(into, `${path}[${String(i)}]`, [shape.each, one]));
  }
}

/** The written fields of an item, one by one. */
export const leavesOf = (item: Item): ItemLeaves => {
  const leaves = new Map<string, ItemLeaf>();
  collect(leaves, '', [itemShapeOf(item.slot), item]);
  return leaves;
};

/** What the fields are put together from, and the beginnings of all paths, to know where anything is written at all. */
interface Written {
  readonly values: ReadonlyMap<string, unknown>;
  readonly begun: ReadonlyMap<string, ReadonlySet<number>>;
  readonly groups: ReadonlySet<string>;
}

const writtenOf = (values: ReadonlyMap<string, unknown>): Written => {
  const begun = new Map<string, Set<number>>();
  const groups = new Set<string>();
  for (const path of values.keys()) {
    for (const { index } of path.matchAll(/[.[]/g)) groups.add(path.slice(0, index));
    for (const match of path.matchAll(/\[(\d+)\]/g)) {
      const list = path.slice(0, match.index);
      begun.set(list, (begun.get(list) ?? new Set()).add(Number(match[1])));
      groups.add(path.slice(0, match.index + match[0].length));
    }
  }
  return { values, begun, groups };
};

const nothing = Symbol('left out');

function put(written: Written, path: string, shape: ItemShape): unknown {
  switch (shape.is) {
    case 'field': {
      if (written.values.has(path)) return written.values.get(path);
      const { whenBlank } = shape.field;
      return typeof whenBlank === 'string' ? nothing : whenBlank.value;
    }
    case 'group': {
      if (shape.whenBlank !== 'kept' && !written.groups.has(path))
        return shape.whenBlank === 'left out' ? nothing : shape.whenBlank.value;
      const entries = shape.parts.map(([key, part]) => [key, put(written, under(path, key), part)] as const);
      return Object.fromEntries(entries.filter(([, value]) => value !== nothing));
    }
    case 'several': {
      const places = [...(written.begun.get(path) ?? [])].sort((a, b) => a - b);
      if (places.length === 0) return shape.leftOut ? nothing : [];
      return places.map((i) => put(written, `${path}[${String(i)}]`, shape.each));
    }
  }
}

/** The item that written fields say; not yet checked against the schema. */
export const itemOfLeaves = (slot: SlotName, values: ReadonlyMap<string, unknown>): unknown => ({
  ...(put(writtenOf(values), '', itemShapeOf(slot)) as Json),
  slot,
});

/** The field that stands at a path: `ports[3].name` → the field `ports[].name`. */
export const templateOf = (path: string): string => path.replaceAll(/\[\d+\]/g, '[]');
