import { type FieldNode, isNumber, valuesText } from '@flangewise/model';
import { z } from 'zod';

/** One line of a calculation's inputs or outputs, as the handbook and the checks read it. */
export interface FieldLine {
  readonly field: string;
  readonly required: boolean;
  /** UCUM code where the field is a number or a list of numbers. */
  readonly unit: string | undefined;
  readonly symbol: string | undefined;
  readonly description: string | undefined;
  /** `number`, `text`, `true or false`, or the texts that are allowed. */
  readonly values: string;
  readonly isNumeric: boolean;
}

const variants = (node: FieldNode): readonly FieldNode[] =>
  (node.anyOf ?? [node]).filter(({ type }) => type !== 'null');

/** A field, and the fields of the objects in it, as `field.inner` and `field[].inner`. */
const linesOf = (field: string, node: FieldNode, required: boolean): readonly FieldLine[] => {
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
      values: valuesText(node),
      isNumeric: numeric !== undefined,
    },
  ];
};

/** The fields of a schema of inputs or outputs, in the order of the declaration. */
export const fieldTable = (schema: z.ZodObject): readonly FieldLine[] => {
  const root = z.toJSONSchema(schema, { io: 'input', reused: 'inline' }) as FieldNode;
  return Object.entries(root.properties ?? {}).flatMap(([field, node]) =>
    linesOf(field, node, root.required?.includes(field) ?? false),
  );
};
