import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { Client } from 'pg';
import { inject, onTestFinished } from 'vitest';
import { checkout } from '../start/checkout.js';
import { applyMigrations, readMigrations } from './apply-migrations.js';
import { openDatabase, type Database } from './client.js';

export const migrationsFolder = join(checkout, 'prisma', 'migrations');

/** When things are put away: at the end of the test, or with `afterAll` at the end of the file. */
export type AtEnd = (putAway: () => Promise<void>) => void;

/** An empty database on the tests' server, dropped at the end. */
export async function emptyDatabase(atEnd: AtEnd = onTestFinished): Promise<string> {
  const server = inject('databaseServer');
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  const run = async (sql: string): Promise<void> => {
    const client = new Client({ connectionString: server });
    await client.connect();
    await client.query(sql);
    await client.end();
  };
  await run(`CREATE DATABASE ${name}`);
  atEnd(() => run(`DROP DATABASE ${name} WITH (FORCE)`));
  return Object.assign(new URL(server), { pathname: `/${name}` }).href;
}

/** A migrated database without any row. */
export async function migratedDatabase(
  atEnd: AtEnd = onTestFinished,
): Promise<{ readonly url: string; readonly database: Database }> {
  const url = await emptyDatabase(atEnd);
  const applied = await applyMigrations(url, readMigrations(migrationsFolder));
  if (!applied.ok) throw new Error(applied.error.message);
  const database = openDatabase(url);
  atEnd(() => database.$disconnect());
  return { url, database };
}
