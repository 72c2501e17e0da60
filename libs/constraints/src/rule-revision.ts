import revision from './rule-revision.json' with { type: 'json' };

/**
 * Moves with every change of a rule, of a calculation or of their data; offers keep the revision that they were checked by. Written by
 * `npm run generate`.
 */
export const ruleRevision = revision.fingerprint;
