import { type InputTrouble, type InquiryInput, inquirySchema, readDocument } from '@flangewise/model';
import type { FieldErrors } from 'react-hook-form';
import { documentOf, type FormValues, isNumberField } from './form-values';

/** `sets[0].batchVolume` → `sets.0.batchVolume`, the name of the field. */
export const fieldNameOf = (path: string): string => path.replace(/\[(\d+)\]/g, '.$1');

const messageOf = (trouble: InputTrouble): string => {
  const name = fieldNameOf(trouble.path);
  if (name === 'title') return 'The inquiry needs a title of 1 to 200 characters.';
  if (isNumberField(name) && trouble.given.startsWith('"'))
    return `${trouble.given} is not a number; write it in digits, without a unit.`;
  if (/\.substance$/.test(name)) return 'Name the substance, by its common name or CAS number.';
  if (/\.role$/.test(name)) return 'Say what the medium does in the vessel.';
  return trouble.message;
};

export interface FieldTrouble {
  /** Name of the field. */
  readonly name: string;
  readonly message: string;
}

const firstOfEach = (troubles: readonly FieldTrouble[]): FieldTrouble[] =>
  troubles.filter((trouble, i) => troubles.findIndex(({ name }) => name === trouble.name) === i);

export type ReadForm =
  | { readonly ok: true; readonly document: InquiryInput }
  | { readonly ok: false; readonly troubles: readonly FieldTrouble[] };

/** Reads what stands in the fields; every trouble with the name of its field. */
export const readForm = (values: FormValues): ReadForm => {
  const document = documentOf(values);
  const outcome = readDocument(inquirySchema, document);
  return outcome.ok
    ? { ok: true, document: document as InquiryInput }
    : {
        ok: false,
        troubles: firstOfEach(
          outcome.error.map((trouble) => ({ name: fieldNameOf(trouble.path), message: messageOf(trouble) })),
        ),
      };
};

/** Why it is not known what is still open; undefined where every field can be read. */
export const whyNotAsked = (read: ReadForm): string | undefined => {
  if (read.ok) return undefined;
  const others = read.troubles.filter(({ name }) => name !== 'title');
  if (others.length === 0) return 'Give the inquiry a title, and what is still open is listed here.';
  return others.length === 1
    ? 'One field cannot be read; once it can, what is still open is listed here.'
    : `${String(others.length)} fields cannot be read; once they can, what is still open is listed here.`;
};

type Tree = { [key: string]: Tree | { type: string; message: string } };

/** Troubles in the shape in which the form library wants them. */
export const errorsOf = (troubles: readonly FieldTrouble[]): FieldErrors<FormValues> => {
  const tree: Tree = {};
  for (const { name, message } of troubles) {
    const keys = name === '' ? ['root'] : name.split('.');
    let at = tree;
    for (const key of keys.slice(0, -1)) at = (at[key] ??= {}) as Tree;
    const last = keys.at(-1) ?? 'root';
    at[last] = { ...at[last], type: 'model', message } as { type: string; message: string };
  }
  return tree as FieldErrors<FormValues>;
};
