import {
  type ExchangeFormat,
  differenceOf,
  type ImportReport,
  readImport,
} from '@flangewise/catalogue/exchange';
import type { CatalogueDifference } from '@flangewise/catalogue/exchange';
import type { Catalogue } from '@flangewise/model';

/** What a file says about a catalogue. */
export interface ReadFile {
  readonly report: Omit<ImportReport, 'catalogue'>;
  /** What the catalogue would have otherwise; null where something is in the way. */
  readonly difference: CatalogueDifference | null;
  /** What the catalogue would hold, items as JSON; null where something is in the way. */
  readonly content: (Pick<Catalogue, 'priceLists'> & { readonly items: string }) | null;
}

export interface GivenFile {
  readonly format: ExchangeFormat;
  readonly content: Uint8Array;
}

/** Reads a file over the catalogue that it is to change; changes nothing. */
export async function readFile(catalogue: Catalogue, { format, content }: GivenFile): Promise<ReadFile> {
  const { catalogue: read, ...report } = await readImport(format, content, catalogue);
  if (read === undefined) return { report, difference: null, content: null };
  const { items, priceLists } = read;
  return {
    report,
    difference: differenceOf(catalogue, read),
    content: { priceLists, items: JSON.stringify(items) },
  };
}
