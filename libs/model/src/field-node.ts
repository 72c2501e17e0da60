import { z } from 'zod';
import { valueAt } from './value-at.js';

/** A field of a schema, as JSON Schema describes it. */
export interface FieldNode {
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly FieldNode[];
  /** Alternatives that are told apart by a field of theirs. */
  readonly oneOf?: readonly FieldNode[];
  readonly items?: FieldNode;
  readonly properties?: Readonly<Record<string, FieldNode>>;
  readonly additionalProperties?: FieldNode | boolean;
  readonly required?: readonly string[];
  readonly unit?: string;
  /** Of a quantity that is typed with its unit. */
  readonly kind?: string;
  readonly symbol?: string;
  readonly description?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
}

const roots = new WeakMap<z.ZodType, FieldNode>();

const rootOf = (schema: z.ZodType): FieldNode => {
  const known = roots.get(schema);
  if (known !== undefined) return known;
  const root = z.toJSONSchema(schema, { io: 'input', reused: 'inline', unrepresentable: 'any' }) as FieldNode;
  roots.set(schema, root);
  return root;
};

const alternatives = (node: FieldNode): readonly FieldNode[] => {
  const given = node.anyOf ?? node.oneOf;
  return given === undefined ? [node] : given.flatMap(alternatives);
};

/** Whether a value has what tells this alternative from the others; fields that it lacks speak against none. */
const isMeant = ({ properties = {} }: FieldNode, value: unknown): boolean =>
  typeof value !== 'object' ||
  value === null ||
  Object.entries(properties).every(
    ([key, { const: only }]) =>
      only === undefined || !(key in value) || (value as Readonly<Record<string, unknown>>)[key] === only,
  );

const meant = (nodes: readonly FieldNode[], value: unknown): readonly FieldNode[] =>
  nodes.flatMap(alternatives).filter((node) => isMeant(node, value));

const child = (node: FieldNode, key: PropertyKey): readonly FieldNode[] => {
  if (typeof key === 'number') return node.items === undefined ? [] : [node.items];
  const { properties, additionalProperties: other } = node;
  const own = typeof key === 'string' && properties !== undefined ? properties[key] : undefined;
  return own !== undefined ? [own] : typeof other === 'object' ? [other] : [];
};

/** What stands on the way to a field: the whole first, the field last, each with the alternatives that the document means. */
export const nodesTo = (
  schema: z.ZodType,
  path: readonly PropertyKey[],
  document: unknown,
): readonly (readonly FieldNode[])[] =>
  path.reduce<readonly (readonly FieldNode[])[]>(
    (way, key, at) => [
      ...way,
      meant(way.at(-1) ?? [], valueAt(document, path.slice(0, at))).flatMap((node) => child(node, key)),
    ],
    [[rootOf(schema)]],
  );

/** Names of the fields that a value may have where these nodes stand. */
export const fieldNames = (nodes: readonly FieldNode[], value?: unknown): readonly string[] => [
  ...new Set(meant(nodes, value).flatMap(({ properties = {} }) => Object.keys(properties))),
];

/** A quantity; a number that is one of a few codes is none. */
export const isNumber = (node: FieldNode): boolean =>
  (node.type === 'number' || node.type === 'integer') && node.const === undefined && node.enum === undefined;

/** Bounds that only say that a number is a safe integer are left out. */
const isBound = (value: number | undefined): value is number =>
  value !== undefined && Math.abs(value) < Number.MAX_SAFE_INTEGER;

const numberRange = (node: FieldNode): string => {
  const bounds = [
    ...(isBound(node.exclusiveMinimum) ? [`> ${String(node.exclusiveMinimum)}`] : []),
    ...(isBound(node.minimum) ? [`≥ ${String(node.minimum)}`] : []),
    ...(isBound(node.exclusiveMaximum) ? [`< ${String(node.exclusiveMaximum)}`] : []),
    ...(isBound(node.maximum) ? [`≤ ${String(node.maximum)}`] : []),
  ];
  const kind = node.type === 'integer' ? 'whole number' : 'number';
  return bounds.length === 0 ? kind : `${kind} ${bounds.join(', ')}`;
};

/** What may stand in a field, in words: `number > 0, ≤ 1`, `text`, `true or false`, or the texts that are allowed. */
export const valuesText = (node: FieldNode): string => {
  if (node.enum) return node.enum.map(String).join(', ');
  if (node.const !== undefined) return String(node.const);
  const several = node.anyOf ?? node.oneOf;
  if (several) return several.map(valuesText).join(' or ');
  if (isNumber(node)) return numberRange(node);
  if (typeof node.type === 'object')
    return node.type.map((type) => valuesText({ ...node, type })).join(' or ');
  if (node.type === 'boolean') return 'true or false';
  if (node.type === 'array') return `list of ${node.items ? valuesText(node.items) : 'values'}`;
  const names = fieldNames([node]);
  if (names.length > 0) return `object of ${names.join(', ')}`;
  return node.type === 'string' ? 'text' : (node.type ?? 'any');
};
