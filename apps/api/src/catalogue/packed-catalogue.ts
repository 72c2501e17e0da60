import type { Catalogue } from '@flangewise/model';

/** A catalogue as JSON in memory that all threads of a process share, so that handing it on copies nothing. */
export interface PackedCatalogue {
  /** Names the content: what has the same key is the same. */
  readonly key: string;
  readonly json: SharedArrayBuffer;
}

export function packCatalogue(key: string, json: string): PackedCatalogue {
  const shared = new SharedArrayBuffer(Buffer.byteLength(json));
  Buffer.from(shared).write(json);
  return { key, json: shared };
}

/** The catalogue of a pack. It passed its schema before it was stored, so nothing is parsed but JSON. */
export const unpackCatalogue = ({ json }: PackedCatalogue): Catalogue =>
  JSON.parse(Buffer.from(json).toString('utf8')) as Catalogue;
