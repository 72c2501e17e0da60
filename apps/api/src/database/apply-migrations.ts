import { createHash, randomUUID } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { Client } from 'pg';
import { z } from 'zod';
import { problem, type StartProblem } from '../start/problems.js';

export interface Migration {
  readonly name: string;
  readonly sql: string;
  readonly checksum: string;
}

/** Any number that nothing else in this database uses: whoever holds it migrates. */
const advisoryLock = 4_310_001;

/** The table that Prisma's own tools read, so that they see the same history. */
const historyTable = `
  CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id" VARCHAR(36) PRIMARY KEY NOT NULL,
    "checksum" VARCHAR(64) NOT NULL,
    "finished_at" TIMESTAMPTZ,
    "migration_name" VARCHAR(255) NOT NULL,
    "logs" TEXT,
    "rolled_back_at" TIMESTAMPTZ,
    "started_at" TIMESTAMPTZ NOT NULL DEFAULT now(),
    "applied_steps_count" INTEGER NOT NULL DEFAULT 0
  )`;

const historyRows = z.array(z.object({ migration_name: z.string(), checksum: z.string() }));

/** The migrations of a folder, oldest first. */
export function readMigrations(folder: string): readonly Migration[] {
  return readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, 'migration.sql')))
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });
}

/** The pending ones, or why this history and these migrations do not belong together. */
function pending(
  migrations: readonly Migration[],
  applied: z.infer<typeof historyRows>,
): Outcome<readonly Migration[], StartProblem> {
  const known = new Map(migrations.map((migration) => [migration.name, migration.checksum]));
  for (const { migration_name: name, checksum } of applied) {
    const ours = known.get(name);
    if (ours === undefined) return fail(problem('MIGRATION_UNKNOWN', { name }));
    if (ours !== checksum) return fail(problem('MIGRATION_CHANGED', { name }));
  }
  const done = new Set(applied.map((row) => row.migration_name));
  return succeed(migrations.filter((migration) => !done.has(migration.name)));
}

async function applyOne(client: Client, migration: Migration): Promise<Outcome<null, StartProblem>> {
  try {
    await client.query('BEGIN');
    await client.query(migration.sql);
    await client.query(
      `INSERT INTO "_prisma_migrations" (id, checksum, migration_name, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, now(), 1)`,
      [randomUUID(), migration.checksum, migration.name],
    );
    await client.query('COMMIT');
    return succeed(null);
  } catch (error) {
    await client.query('ROLLBACK');
    const reason = error instanceof Error ? error.message : String(error);
    return fail(problem('MIGRATION_FAILED', { name: migration.name, reason }));
  }
}

/** Applies what is pending, each migration in a transaction of its own. */
async function applyPending(
  client: Client,
  migrations: readonly Migration[],
): Promise<Outcome<readonly string[], StartProblem>> {
  await client.query(historyTable);
  const history = await client.query(
    'SELECT migration_name, checksum FROM "_prisma_migrations" WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
  );
  const open = pending(migrations, historyRows.parse(history.rows));
  if (!open.ok) return open;
  for (const migration of open.value) {
    const applied = await applyOne(client, migration);
    if (!applied.ok) return applied;
  }
  return succeed(open.value.map((migration) => migration.name));
}

/**
 * Brings a database to the state that the migrations describe. Of several starters at once one migrates, the others wait.
 *
 * @returns the names of the migrations that were applied now
 */
export async function applyMigrations(
  url: string,
  migrations: readonly Migration[],
): Promise<Outcome<readonly string[], StartProblem>> {
  const client = new Client({ connectionString: url });
  client.on('error', () => undefined);
  try {
    await client.connect();
    await client.query('SELECT pg_advisory_lock($1)', [advisoryLock]);
    return await applyPending(client, migrations);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail(problem('DATABASE_UNREACHABLE', { server: new URL(url).host, reason }));
  } finally {
    await client.end();
  }
}
