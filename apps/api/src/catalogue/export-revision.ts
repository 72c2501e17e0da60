import type { ExchangeFormat } from '@flangewise/catalogue/exchange';
import { refuse } from '../errors/refusal.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { loadCatalogue } from './load-catalogue.js';

/** A revision as a file that can be imported again. */
export async function exportRevision(
  { database, workshops }: Omit<CatalogueDesk, 'person'>,
  { id, format }: { readonly id: string; readonly format: ExchangeFormat },
): Promise<{ readonly name: string; readonly content: Uint8Array }> {
  const row = await database.catalogueRevision.findUnique({ where: { id }, select: { name: true } });
  if (row === null) throw refuse('NOT_FOUND', { what: 'catalogue revision', field: 'id', given: id });
  const over = await loadCatalogue(database, id);
  const content = await workshops.runJob('writeFile', { over, question: { format } });
  return { name: row.name, content };
}
