import { ruleRevision } from '@flangewise/constraints';
import { refuse } from '../errors/refusal.js';
import type { Workshop } from '../workshop/workshop.js';
import { numberOf, type UnsentRevision } from './unsent-revision.js';

/** Refuses a revision whose items, prices or proof are not those of today. */
export function requireInForce({ catalogue }: Workshop, revision: UnsentRevision): void {
  const { catalogueRevision, ruleRevision: rules } = revision.systemRevision;
  if (catalogueRevision === catalogue.revision && rules === ruleRevision) return;
  throw refuse('OFFER_OUTDATED', {
    number: numberOf(revision),
    given: `catalogue ${catalogueRevision} and rules ${rules}`,
    current: `catalogue ${catalogue.revision} and rules ${ruleRevision}`,
  });
}
