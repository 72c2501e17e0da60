import {
  fail,
  inquirySchema,
  type InquiryInput,
  type Outcome,
  readDocument,
  succeed,
} from '@flangewise/model';

/** An inquiry is a page or two of text; more is something else. */
export const largestFile = 1_000_000;

const allowed = 'Allowed is one inquiry as a JSON file (.json) of at most 1 MB.';
const kept = 'What you typed is kept.';

const sizeText = (bytes: number): string =>
  bytes < 1_000_000 ? `${String(Math.ceil(bytes / 1000))} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;

const parse = (text: string): Outcome<unknown, undefined> => {
  try {
    return succeed(JSON.parse(text) as unknown);
  } catch {
    return fail(undefined);
  }
};

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether what is wrong stands in single fields, so that the form can show it there. */
const isFillable = (document: Record<string, unknown>): boolean => {
  const groups = ['process', 'site', 'requirements', 'commercial'];
  const lists = [document['sets'], isObject(document['process']) ? document['process']['media'] : undefined];
  return (
    ['title', 'process', 'sets'].some((key) => key in document) &&
    groups.every((key) => document[key] === undefined || isObject(document[key])) &&
    lists.every((list) => list === undefined || (Array.isArray(list) && list.every(isObject)))
  );
};

/**
 * Reads an inquiry from a file. Fields that cannot be used come along, to be shown and mended in the form.
 *
 * @error a sentence: what was given, what is allowed
 */
export const readInquiryFile = async (file: File): Promise<Outcome<Partial<InquiryInput>, string>> => {
  if (file.size > largestFile) return fail(`“${file.name}” has ${sizeText(file.size)}. ${allowed} ${kept}`);
  const json = parse(await file.text());
  if (!json.ok) return fail(`“${file.name}” is not JSON. ${allowed} ${kept}`);
  if (!isObject(json.value))
    return fail(`“${file.name}” holds no inquiry: it is not one JSON object. ${allowed} ${kept}`);
  const outcome = readDocument(inquirySchema, json.value);
  if (outcome.ok) return succeed(json.value as InquiryInput);
  if (isFillable(json.value)) return succeed(json.value as Partial<InquiryInput>);
  const first = outcome.error[0];
  return fail(
    `“${file.name}” holds no inquiry: ${first === undefined ? 'it does not have its fields' : `${first.path === '' ? 'the document' : first.path}: ${first.message}`}. ${allowed} ${kept}`,
  );
};
