import type { FieldChange } from './catalogue-difference.js';

type Json = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const rowName = (row: unknown): string => {
  if (!isRecord(row)) return JSON.stringify(row);
  const { id } = row;
  return typeof id === 'string' ? id : JSON.stringify(row);
};

const words = (path: string): string =>
  path
    .split('.')
    .map((key) => key.replaceAll(/([a-z\d])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`))
    .join(' ');

/** A row in words: its values, each with its name. */
const textOf = (value: unknown): string | null => {
  if (value === undefined || value === null) return null;
  if (isRecord(value))
    return Object.entries(value)
      .filter(([, inner]) => inner !== null && inner !== undefined)
      .map(([key, inner]) => `${words(key)} ${textOf(inner) ?? ''}`)
      .join(', ');
  if (Array.isArray(value)) return value.map((one) => textOf(one) ?? '').join('; ');
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value as string | number);
};

function collect(into: Map<string, unknown>, path: string, value: unknown): void {
  if (Array.isArray(value) && value.some(isRecord))
    for (const row of value) into.set(`${path}[${rowName(row)}]`, row);
  else if (isRecord(value))
    for (const [key, inner] of Object.entries(value))
      collect(into, path === '' ? key : `${path}.${key}`, inner);
  else if (value !== undefined) into.set(path, value);
}

const leaves = (document: unknown): ReadonlyMap<string, unknown> => {
  const into = new Map<string, unknown>();
  collect(into, '', document);
  return into;
};

const labelOf = (path: string): string => words(path.replace(/\[.*$/s, ''));

/** The fields and rows in which two documents differ; a row without a name of its own that changed is one that went and one that came. */
export const documentChanges = (before: unknown, after: unknown): FieldChange[] => {
  const [old, now] = [leaves(before), leaves(after)];
  return [...new Set([...now.keys(), ...old.keys()])].flatMap((path) => {
    const [was, is] = [old.get(path), now.get(path)];
    if (JSON.stringify(was) === JSON.stringify(is)) return [];
    return [{ path, label: labelOf(path), before: textOf(was), after: textOf(is) }];
  });
};
