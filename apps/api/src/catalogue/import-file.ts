import type { CatalogueDifference } from '@flangewise/catalogue/exchange';
import { storable } from '../database/storable.js';
import { CatalogueAction } from '../generated/enums.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { changeDraft, type SeenDraft, takeDraft } from './change-draft.js';
import { loadCatalogue } from './load-catalogue.js';
import type { GivenFile, ReadFile } from './read-file.js';
import { writeItems } from './write-items.js';

export interface ImportAsked extends SeenDraft, GivenFile {
  /** Whether the draft is changed, where nothing is in the way; else the file is only looked at. */
  readonly apply: boolean;
}

export interface Imported {
  readonly applied: boolean;
  /** Of the draft, after it. */
  readonly version: number;
  readonly report: ReadFile['report'];
  /** What the draft has otherwise by it; null where something is in the way. */
  readonly difference: CatalogueDifference | null;
}

/** Reads a file over an open draft and, where it is asked to and nothing is in the way, makes the draft what the file says. */
export async function importFile(
  desk: CatalogueDesk,
  { format, content: file, apply, ...seen }: ImportAsked,
): Promise<Imported> {
  const { database, workshops } = desk;
  const over = await database.$transaction(async (step) => {
    await takeDraft(step, seen);
    return loadCatalogue(step, seen.draftId);
  });
  const read = await workshops.runJob('readFile', { over, question: { format, content: file } });
  const { report, difference, content } = read;
  if (!apply || content === null) return { applied: false, version: seen.version, report, difference };
  const { added, changed, unchanged } = report;
  const version = await changeDraft(desk, seen, async (step, { id: revisionId }) => {
    await step.catalogueItem.deleteMany({ where: { revisionId } });
    await writeItems(step, revisionId, content.items);
    return {
      action: CatalogueAction.imported,
      subject: format,
      after: { added, changed, unchanged },
      data: { priceLists: storable(content.priceLists) },
    };
  });
  return { applied: true, version, report, difference };
}
