import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { Client } from 'pg';
import { inject, onTestFinished } from 'vitest';
import { checkout } from '../start/checkout.js';
import { applyMigrations, readMigrations } from './apply-migrations.js';
import { openDatabase, type Database } from './client.js';

export const migrationsFolder = join(checkout, 'prisma', 'migrations');

/** An empty database on the tests' server, dropped when the test ends. */
export async function emptyDatabase(): Promise<string> {
  const server = inject('databaseServer');
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  const run = async (sql: string): Promise<void> => {
    const client = new Client({ connectionString: server });
    await client.connect();
    await client.query(sql);
    await client.end();
  };
  await run(`CREATE DATABASE ${name}`);
  onTestFinished(() => run(`DROP DATABASE ${name} WITH (FORCE)`));
  return Object.assign(new URL(server), { pathname: `/${name}` }).href;
}

/** A migrated database without any row. */
export async function migratedDatabase(): Promise<{ readonly url: string; readonly database: Database }> {
  const url = await emptyDatabase();
  const applied = await applyMigrations(url, readMigrations(migrationsFolder));
  if (!applied.ok) throw new Error(applied.error.message);
  const database = openDatabase(url);
  onTestFinished(() => database.$disconnect());
  return { url, database };
}
