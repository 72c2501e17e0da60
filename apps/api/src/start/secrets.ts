import { randomBytes, randomInt } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { z } from 'zod';
import type { DataFolder } from './data-folder.js';
import { problem, type StartProblem } from './problems.js';

const schema = z.strictObject({
  /** Signs the session cookies. */
  authSecret: z.string().min(32),
  databasePassword: z.string().min(16),
  /** Of the invented people of the demo; printed at each start. */
  demoPassword: z.string().min(12),
});

export type Secrets = z.infer<typeof schema>;

/** Letters and digits that nobody takes for one another. */
const clear = 'abcdefghjkmnpqrstuvwxyz23456789';

function readable(groups: number): string {
  const group = (): string => Array.from({ length: 4 }, () => clear[randomInt(clear.length)]).join('');
  return Array.from({ length: groups }, group).join('-');
}

/** The secrets of this data folder, drawn at its first start. */
export function readSecrets(data: DataFolder): Outcome<Secrets, StartProblem> {
  const file = join(data.path, 'secrets.json');
  try {
    if (!existsSync(file)) {
      const secrets: Secrets = {
        authSecret: randomBytes(32).toString('base64url'),
        databasePassword: randomBytes(24).toString('base64url'),
        demoPassword: readable(3),
      };
      data.writeNew('secrets.json', `${JSON.stringify(secrets, null, 2)}\n`);
    }
    return succeed(schema.parse(JSON.parse(readFileSync(file, 'utf8'))));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail(problem('SECRETS_NOT_READABLE', { file, reason }));
  }
}
