import type { AuditAnswer } from '@flangewise/model';
import type { CatalogueDesk } from '../trpc/context.js';
import { loadCatalogue } from './load-catalogue.js';

/** A revision and its rules looked at as a whole; stopped when nobody waits for the answer any more. */
export async function auditRevision(
  { database, workshops }: CatalogueDesk,
  id: string,
  signal: AbortSignal | undefined,
): Promise<AuditAnswer> {
  const over = await loadCatalogue(database, id);
  return workshops.runJob('audit', { over, question: null }, signal);
}
