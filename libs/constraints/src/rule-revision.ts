/** Moves with every change of a rule; offers keep the revision that they were checked by. */
export const ruleRevision = 'rules-2026-11';
