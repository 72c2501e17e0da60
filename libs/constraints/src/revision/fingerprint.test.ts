import { expect, it } from 'vitest';
import { ruleRevision } from '../rule-revision.js';
import { fingerprintOfRules } from './fingerprint.js';

it('is the revision that answers and offers carry: after a change run `npm run generate -w @flangewise/constraints`', async () => {
  expect(ruleRevision).toBe(await fingerprintOfRules());
});
