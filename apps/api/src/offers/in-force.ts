import { ruleRevision } from '@flangewise/constraints';
import { currentRevision } from '../catalogue/load-catalogue.js';
import { refuse } from '../errors/refusal.js';
import type { Prisma } from '../generated/client.js';
import type { Workshop } from '../workshop/workshop.js';
import { numberOf, type UnsentRevision } from './unsent-revision.js';

/**
 * Refuses a revision whose items, prices or proof are not those of now: the catalogue in force is asked for again, since another
 * may have been released after the request came.
 */
export async function requireInForce(
  step: Prisma.TransactionClient,
  { catalogue }: Workshop,
  revision: UnsentRevision,
): Promise<void> {
  const { catalogueRevision, ruleRevision: rules } = revision.systemRevision;
  const { name: current } = await currentRevision(step);
  if ([current, catalogue.revision].every((name) => name === catalogueRevision) && rules === ruleRevision)
    return;
  throw refuse('OFFER_OUTDATED', {
    number: numberOf(revision),
    given: `catalogue ${catalogueRevision} and rules ${rules}`,
    current: `catalogue ${current} and rules ${ruleRevision}`,
  });
}
