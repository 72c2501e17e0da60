import { z } from 'zod';

/** One line of a calculation's inputs or outputs, as the handbook and the checks read it. */
export interface FieldLine {
  readonly field: string;
  readonly required: boolean;
  /** UCUM code where the field is a number or a list of numbers. */
  readonly unit: string | undefined;
  readonly symbol: string | undefined;
  readonly description: string | undefined;
  /** `number`, `text`, `yes or no`, or the texts that are allowed. */
  readonly values: string;
  readonly isNumeric: boolean;
}

interface Node {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Node[];
  readonly items?: Node;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly unit?: string;
  readonly symbol?: string;
  readonly description?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
}

/** A quantity; a number that is one of a few codes is none. */
const isNumber = (node: Node): boolean =>
  (node.type === 'number' || node.type === 'integer') && node.const === undefined && node.enum === undefined;

/** Bounds that only say that a number is a safe integer are left out. */
const isBound = (value: number | undefined): value is number =>
  value !== undefined && Math.abs(value) < Number.MAX_SAFE_INTEGER;

const numberRange = (node: Node): string => {
  const bounds = [
    ...(isBound(node.exclusiveMinimum) ? [`> ${String(node.exclusiveMinimum)}`] : []),
    ...(isBound(node.minimum) ? [`≥ ${String(node.minimum)}`] : []),
    ...(isBound(node.exclusiveMaximum) ? [`< ${String(node.exclusiveMaximum)}`] : []),
    ...(isBound(node.maximum) ? [`≤ ${String(node.maximum)}`] : []),
  ];
  const kind = node.type === 'integer' ? 'whole number' : 'number';
  return bounds.length === 0 ? kind : `${kind} ${bounds.join(', ')}`;
};

const valuesOf = (node: Node): string => {
  if (node.enum) return node.enum.map(String).join(', ');
  if (node.const !== undefined) return String(node.const);
  if (node.anyOf) return node.anyOf.map(valuesOf).join(' or ');
  if (isNumber(node)) return numberRange(node);
  if (node.type === 'boolean') return 'yes or no';
  if (node.type === 'array') return `list of ${node.items ? valuesOf(node.items) : 'values'}`;
  return node.type === 'string' ? 'text' : (node.type ?? 'any');
};

const variants = (node: Node): readonly Node[] =>
  (node.anyOf ?? [node]).filter(({ type }) => type !== 'null');

/** A field, and the fields of the objects in it, as `field.inner` and `field[].inner`. */
const linesOf = (field: string, node: Node, required: boolean): readonly FieldLine[] => {
  const inner = variants(node).flatMap((variant) => {
    const list = variant.type === 'array';
    const holder = list ? variant.items : variant;
    return Object.entries(holder?.properties ?? {}).map(
      ([name, child]) =>
        [
          `${field}${list ? '[]' : ''}.${name}`,
          child,
          required && (holder?.required?.includes(name) ?? false),
        ] as const,
    );
  });
  if (inner.length > 0) return inner.flatMap(([name, child, needed]) => linesOf(name, child, needed));
  const numeric = variants(node).find((variant) =>
    isNumber(variant.type === 'array' ? (variant.items ?? variant) : variant),
  );
  const labelled = [node, numeric, numeric?.items].find((candidate) => candidate?.unit !== undefined) ?? node;
  return [
    {
      field,
      required,
      unit: labelled.unit,
      symbol: labelled.symbol,
      description: labelled.description ?? node.description,
      values: valuesOf(node),
      isNumeric: numeric !== undefined,
    },
  ];
};

/** The fields of a schema of inputs or outputs, in the order of the declaration. */
export const fieldTable = (schema: z.ZodObject): readonly FieldLine[] => {
  const root = z.toJSONSchema(schema, { io: 'input', reused: 'inline' }) as Node;
  return Object.entries(root.properties ?? {}).flatMap(([field, node]) =>
    linesOf(field, node, root.required?.includes(field) ?? false),
  );
};
