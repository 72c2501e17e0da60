import type { Assessment, SystemInput } from '@flangewise/model';
import { visibleSystems } from '../auth/visible.js';
import { refuse } from '../errors/refusal.js';
import type { Desk } from '../trpc/context.js';

/** The proof of a saved system, by the catalogue and the rules in force. */
export async function getEvidence(
  { database, workshop, person }: Desk,
  systemId: string,
): Promise<Assessment> {
  const row = await database.system.findFirst({
    where: { id: systemId, ...visibleSystems(person) },
    select: { document: true },
  });
  if (row === null) throw refuse('NOT_FOUND', { what: 'system', field: 'systemId', given: systemId });
  return workshop.assess(row.document as unknown as SystemInput, { withEvidence: true });
}
