import { z } from 'zod';
import data from './sources.json';

const source = z.strictObject({
  kind: z.enum([
    'standard',
    'regulation',
    'book',
    'article',
    'data sheet',
    'software',
    'physics',
    'practice',
  ]),
  /** Full citation. */
  citation: z.string().min(1),
  /** Through what it was read, where not in the original. */
  note: z.string().min(1).optional(),
});

export type Source = z.output<typeof source>;

/** Every source that a calculation cites, by key. */
export const sources: ReadonlyMap<string, Source> = new Map(
  Object.entries(z.record(z.string().min(1), source).parse(data)),
);

/** What may stand between the key and the place: a key ends where a word ends. */
const endsKey = /^(?:$|[ ,:;])/u;

/**
 * The source that a citation such as `en-13445-3:2021 §7.4.2` names: the longest key with which it begins.
 * @returns undefined where no key fits
 */
export const findSource = (citation: string): (Source & { readonly key: string }) | undefined => {
  const key = [...sources.keys()]
    .filter((candidate) => citation.startsWith(candidate) && endsKey.test(citation.slice(candidate.length)))
    .reduce<string | undefined>(
      (longest, candidate) => (candidate.length > (longest?.length ?? 0) ? candidate : longest),
      undefined,
    );
  const found = key === undefined ? undefined : sources.get(key);
  return key === undefined || found === undefined ? undefined : { key, ...found };
};
