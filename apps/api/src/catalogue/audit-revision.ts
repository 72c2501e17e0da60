import type { AuditProgress } from '@flangewise/constraints';
import type { AuditAnswer } from '@flangewise/model';
import { refuse } from '../errors/refusal.js';
import type { CatalogueDesk } from '../trpc/context.js';
import { type AuditMeter, createAuditMeter, readProgress } from './audit-meter.js';
import { findEmptySlots } from './find-empty-slots.js';
import { loadCatalogue } from './load-catalogue.js';

/** Audits that this process has under way, by revision. */
const underWay = new Map<string, AuditMeter>();

/** A revision and its rules looked at as a whole; stopped when nobody waits for the answer any more. */
export async function auditRevision(
  { database, workshops }: Omit<CatalogueDesk, 'person'>,
  id: string,
  signal: AbortSignal | undefined,
): Promise<AuditAnswer> {
  const over = await loadCatalogue(database, id);
  const empty = await findEmptySlots(database, id);
  if (empty.length > 0) throw refuse('CATALOGUE_INCOMPLETE', { slots: empty.join(', ') });
  const progress = createAuditMeter();
  underWay.set(id, progress);
  try {
    return await workshops.runJob('audit', { over, question: { progress } }, signal);
  } finally {
    if (underWay.get(id) === progress) underWay.delete(id);
  }
}

/** How far the audit of a revision is; null where none is under way, or another process has it. */
export function auditProgress(id: string): AuditProgress | null {
  const meter = underWay.get(id);
  return meter === undefined ? null : readProgress(meter);
}
