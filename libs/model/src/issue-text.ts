import type { z } from 'zod';
import { nearestName } from './edit-distance.js';
import { fieldNames, type FieldNode, nodesTo, valuesText } from './field-node.js';
import { valueAt } from './value-at.js';

type Issue = z.core.$ZodIssue;

const isQuantity = ({ kind }: FieldNode): boolean => kind !== undefined;

/** What a field wants: `p, gauge pressure: number ≥ 0 [Pa]`. Where it says nothing of itself, what it stands in speaks. */
const wanted = (schema: z.ZodType, path: readonly PropertyKey[], document: unknown): string => {
  const way = nodesTo(schema, path, document);
  const own = way.at(-1) ?? [];
  const described = way.flat().findLast(({ description }) => description !== undefined);
  const named = [own.find(({ symbol }) => symbol !== undefined)?.symbol, described?.description];
  const isChoice = own.length === 1 && own[0]?.enum !== undefined;
  const values = own.some(isQuantity) ? ['text of number and unit'] : [...new Set(own.map(valuesText))];
  const unit = own.find((node) => node.unit !== undefined && !isQuantity(node))?.unit ?? '1';
  return [
    named.filter((part) => part !== undefined).join(', '),
    `${isChoice ? 'one of ' : ''}${values.join(' or ')}${unit === '1' ? '' : ` [${unit}]`}`,
  ]
    .filter((part) => part !== '')
    .join(': ');
};

const unknownField = (key: string, known: readonly string[]): string => {
  const meant = nearestName(key, known);
  return `there is no such field; ${meant === undefined ? 'allowed are' : `was ${meant} meant? Allowed are`} ${known.join(', ')}`;
};

/** The issues of fields that a schema does not know, one each. */
export const apart = (issue: Issue): readonly Issue[] =>
  issue.code === 'unrecognized_keys'
    ? issue.keys.map((key) => ({ ...issue, path: [...issue.path, key], keys: [key] }))
    : [issue];

/** What is allowed in the field that an issue is about, for a reader who does not know the schema; unknown fields `apart`. */
export const issueText = (schema: z.ZodType, issue: Issue, document: unknown): string => {
  const { path } = issue;
  switch (issue.code) {
    case 'unrecognized_keys': {
      const holder = path.slice(0, -1);
      const nodes = nodesTo(schema, holder, document).at(-1) ?? [];
      return unknownField(String(path.at(-1)), fieldNames(nodes, valueAt(document, holder)));
    }
    case 'invalid_type':
    case 'invalid_value':
      return `give ${wanted(schema, path, document)}`;
    case 'too_small':
    case 'too_big':
      return typeof valueAt(document, path) === 'number'
        ? `give ${wanted(schema, path, document)}`
        : issue.message;
    default:
      return issue.message;
  }
};
