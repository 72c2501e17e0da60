/** Writes the revision of the rules and calculations as they are now: `npm run generate -w @flangewise/constraints`. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fingerprintOfRules } from './fingerprint.js';

const fingerprint = await fingerprintOfRules();
const file = join(import.meta.dirname, '..', 'rule-revision.json');
await writeFile(file, `${JSON.stringify({ fingerprint })}\n`);
