import { z } from 'zod';
import { type FieldNode, isNumber } from './field-node.js';
import { itemSchema } from './item.js';
import { type ShownUnit, shownUnitOf } from './shown-unit.js';
import type { SlotName } from './slot.js';

/** What is written in a field: `texts` and `numbers` are several of them, `document` anything else, as JSON. */
export type FieldForm =
  'text' | 'number' | 'whole number' | 'yes or no' | 'choice' | 'texts' | 'numbers' | 'document';

/** What stands in an item where nothing is written: the value, or that something has to be written. */
export type WhenBlank = { readonly value: unknown } | 'left out' | 'refused';

/** One field of an item, as tables have it in a column and forms in a line. */
export interface ItemField {
  /** `geometry.innerDiameterM`, `ports[].name`; between the brackets stands which of several. */
  readonly path: string;
  /** The same in words, without the unit: "geometry inner diameter", "ports # name"; # stands for which of several. */
  readonly label: string;
  readonly description: string | undefined;
  readonly form: FieldForm;
  readonly unit: ShownUnit | undefined;
  readonly whenBlank: WhenBlank;
  /** Whether null may be written, where leaving it out means something else. */
  readonly takesNull: boolean;
  readonly choices: readonly string[];
  readonly bounds: Pick<FieldNode, 'minimum' | 'maximum' | 'exclusiveMinimum' | 'exclusiveMaximum'>;
  readonly pattern: RegExp | undefined;
  readonly example: string | undefined;
}

/** How the fields of an item stand in each other. */
export type ItemShape =
  | { readonly is: 'field'; readonly field: ItemField }
  | {
      readonly is: 'group';
      readonly parts: readonly (readonly [key: string, shape: ItemShape])[];
      /** What stands there where none of its fields is written; `kept` where it always does. */
      readonly whenBlank: 'kept' | 'left out' | { readonly value: unknown };
    }
  | {
      readonly is: 'several';
      readonly each: ItemShape;
      /** Whether it is left out where there is none; an empty list else. */
      readonly leftOut: boolean;
    };

interface Node extends FieldNode {
  readonly default?: unknown;
  readonly pattern?: string;
  readonly examples?: readonly unknown[];
  readonly items?: Node;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
}

/** Where a node stands, and whether something has to. */
interface Place {
  readonly slot: SlotName;
  readonly path: string;
  readonly words: readonly string[];
  readonly key: string;
  readonly required: boolean;
}

/** What names of fields carry of the unit in which items hold them. */
const suffixes: Readonly<Record<string, RegExp>> = {
  Pa: /Pa(Gauge)?$/,
  K: /K$/,
  m: /M$/,
  m2: /M2$/,
  kg: /Kg$/,
  W: /W$/,
  N: /N$/,
  'N.m': /Nm$/,
  s: /S$/,
  '/s': /PerS$/,
  'Pa.s': /PaS$/,
  L: /L$/,
  'm3/s': /M3PerS$/,
  'kg/m3': /KgPerM3$/,
  'J/(kg.K)': /JPerKgK$/,
  deg: /Deg$/,
  d: /Days$/,
};

/** Words that say more than the name of the field. */
const otherWords: Readonly<Record<string, string>> = {
  id: 'number',
  portsM: 'takes ports',
};

/** "maxPressurePaGauge" [Pa] → "max pressure". */
const wordsOf = (key: string, unit: string | undefined): string =>
  otherWords[key] ??
  key
    .replace(suffixes[unit ?? ''] ?? /$^/, '')
    .replaceAll(/([a-z\d])([A-Z])/g, '$1 $2')
    .replaceAll(/[A-Z](?=[a-z]{2})/g, (letter) => letter.toLowerCase());

/** The node without the possibility of null, and whether it had it. */
const withoutNull = (node: Node): { readonly node: Node; readonly nullable: boolean } => {
  if (typeof node.type === 'object') {
    const [type, ...others] = node.type.filter((one) => one !== 'null');
    if (type !== undefined && others.length === 0) return { node: { ...node, type }, nullable: true };
  }
  const rest = node.anyOf?.filter(({ type }) => type !== 'null');
  if (node.anyOf === undefined || rest?.length !== 1 || rest[0] === undefined)
    return { node, nullable: false };
  const { anyOf: _, ...own } = node;
  return { node: { ...rest[0], ...own }, nullable: true };
};

const scalarForm = (node: Node): FieldForm => {
  if (node.enum !== undefined || node.const !== undefined)
    return (node.enum ?? [node.const]).every((one) => typeof one === 'string') ? 'choice' : 'document';
  if (isNumber(node)) return node.type === 'integer' ? 'whole number' : 'number';
  return node.type === 'string' ? 'text' : node.type === 'boolean' ? 'yes or no' : 'document';
};

const formOf = (node: Node): FieldForm => {
  if (node.type !== 'array' || node.items === undefined) return scalarForm(node);
  const each = scalarForm(node.items);
  if (each === 'number' || each === 'whole number') return 'numbers';
  return each === 'text' || each === 'choice' ? 'texts' : 'document';
};

const whenBlankOf = (node: Node, nullable: boolean, { required }: Place): WhenBlank => {
  if (node.default !== undefined) return { value: node.default };
  if (!required) return 'left out';
  if (nullable) return { value: null };
  return node.type === 'array' ? { value: [] } : 'refused';
};

const fieldOf = (node: Node, nullable: boolean, place: Place): ItemField => {
  const number = node.type === 'array' ? (node.items ?? node) : node;
  const unit = number.unit ?? node.unit;
  return {
    path: place.path,
    label: [...place.words, wordsOf(place.key, unit)].filter((word) => word !== '').join(' '),
    description: node.description ?? number.description,
    form: formOf(node),
    unit: unit === undefined ? undefined : shownUnitOf({ slot: place.slot, key: place.key, unit }),
    whenBlank: whenBlankOf(node, nullable, place),
    takesNull: nullable,
    choices: (number.enum ?? (number.const === undefined ? [] : [number.const])).map(String),
    bounds: number,
    pattern: number.pattern === undefined ? undefined : new RegExp(number.pattern),
    example: number.examples?.[0] === undefined ? undefined : String(number.examples[0]),
  };
};

/** Fields that a node has of its own, and not only values under any key. */
const isGroup = (node: Node): node is Node & { properties: Readonly<Record<string, Node>> } =>
  node.type === 'object' && Object.keys(node.properties ?? {}).length > 0;

const groupOf = (
  node: Node & { properties: Readonly<Record<string, Node>> },
  place: Omit<Place, 'key' | 'required'>,
) =>
  Object.entries(node.properties).map(
    ([key, child]) =>
      [
        key,
        shapeOf(child, {
          ...place,
          path: place.path === '' ? key : `${place.path}.${key}`,
          key,
          required: node.required?.includes(key) ?? false,
        }),
      ] as const,
  );

const whenBlankGroup = (node: Node, nullable: boolean, { required }: Place) => {
  if (node.default !== undefined) return { value: node.default };
  return !required ? ('left out' as const) : nullable ? { value: null } : ('kept' as const);
};

function shapeOf(given: Node, place: Place): ItemShape {
  const { node, nullable } = withoutNull(given);
  const inner = { slot: place.slot, words: [...place.words, wordsOf(place.key, undefined)] };
  if (isGroup(node))
    return {
      is: 'group',
      parts: groupOf(node, { ...inner, path: place.path }),
      whenBlank: whenBlankGroup(node, nullable, place),
    };
  const { items } = node;
  if (node.type === 'array' && items !== undefined && isGroup(items) && !nullable)
    return {
      is: 'several',
      each: {
        is: 'group',
        parts: groupOf(items, { ...inner, words: [...inner.words, '#'], path: `${place.path}[]` }),
        whenBlank: 'left out',
      },
      leftOut: !place.required,
    };
  return { is: 'field', field: fieldOf(node, nullable, place) };
}

const nodes = (z.toJSONSchema(itemSchema, { io: 'output', reused: 'inline', unrepresentable: 'any' }) as Node)
  .oneOf;
const shapes = new Map<SlotName, ItemShape>();

/** How the fields of the items of a slot stand in each other, as the schema has them. */
export const itemShapeOf = (slot: SlotName): ItemShape => {
  const known = shapes.get(slot);
  if (known !== undefined) return known;
  const node = nodes?.find(({ properties }) => properties?.['slot']?.const === slot);
  if (node === undefined || !isGroup(node)) throw new Error(`the schema of items knows no slot ${slot}`);
  const shape: ItemShape = {
    is: 'group',
    parts: groupOf(node, { slot, path: '', words: [] }),
    whenBlank: 'kept',
  };
  shapes.set(slot, shape);
  return shape;
};

const fieldsIn = (shape: ItemShape): readonly ItemField[] => {
  switch (shape.is) {
    case 'field':
      return [shape.field];
    case 'group':
      return shape.parts.flatMap(([, part]) => fieldsIn(part));
    case 'several':
      return fieldsIn(shape.each);
  }
};

const fields = new Map<SlotName, readonly ItemField[]>();

/** Every field that an item of a slot may have, in the order of the schema. */
export const itemFieldsOf = (slot: SlotName): readonly ItemField[] => {
  const known = fields.get(slot) ?? fieldsIn(itemShapeOf(slot));
  fields.set(slot, known);
  return known;
};
