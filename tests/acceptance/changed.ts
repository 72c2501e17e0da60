import type { Change, InquiryInput } from '@flangewise/model';

type Json = Record<string, unknown>;

/** `sets[0].pressure.highest` → sets, 0, pressure, highest */
const keysOf = (path: string): readonly string[] => path.replaceAll(/\[(\d+)\]/g, '.$1').split('.');

const put = (document: Json, [key, ...rest]: readonly string[], value: unknown): void => {
  if (key === undefined) return;
  if (rest.length > 0) {
    document[key] ??= {};
    put(document[key] as Json, rest, value);
  } else if (value === undefined) Reflect.deleteProperty(document, key);
  else document[key] = typeof document[key] === 'number' ? Number(value) : value;
};

/** The inquiry with the changes of a repair made to it: a field takes what stands in `to`, or is left open. */
export const changed = (inquiry: InquiryInput, changes: Change['changes']): InquiryInput => {
  const document = structuredClone(inquiry) as Json;
  for (const { path, to } of changes) put(document, keysOf(path), to === 'left open' ? undefined : to);
  return document as InquiryInput;
};
