import { Client } from 'pg';
import { expect, it, onTestFinished } from 'vitest';
import { applyMigrations, readMigrations } from './apply-migrations.js';
import { emptyDatabase, migrationsFolder } from './test-database.js';

const migrations = readMigrations(migrationsFolder);
const here = migrations.findIndex(({ name }) => name.endsWith('one_client_a_name'));

/** A database as it was before, in which a client was entered three times. */
async function enteredThrice(): Promise<{ readonly url: string; readonly sql: Client }> {
  const url = await emptyDatabase();
  await applyMigrations(url, migrations.slice(0, here));
  const sql = new Client({ connectionString: url });
  await sql.connect();
  onTestFinished(() => sql.end());
  await sql.query(`
    INSERT INTO "Client" ("id", "name", "createdAt", "updatedAt") VALUES
      ('late', 'PELM orvane', '2026-02-01', now()), ('first', 'Pelm Orvane', '2026-01-01', now()),
      ('blanks', ' Pelm  Orvane', '2026-03-01', now()), ('another', 'Pelm', '2026-01-01', now());
    INSERT INTO "User" ("id", "name", "email", "role", "clientId", "updatedAt")
      VALUES ('person', 'A', 'a@pelm.example', 'customer', 'late', now());
    INSERT INTO "Inquiry" ("id", "title", "clientId", "authorId", "document", "updatedAt") VALUES
      ('1', 'one', 'blanks', 'person', '{}', now()), ('2', 'two', 'another', 'person', '{}', now());`);
  return { url, sql };
}

const state = async (sql: Client): Promise<unknown> => {
  const { rows } = await sql.query(`
    SELECT (SELECT json_agg("id" ORDER BY "id") FROM "Client") AS "clients",
      (SELECT "clientId" FROM "User") AS "person",
      (SELECT json_agg("clientId" ORDER BY "id") FROM "Inquiry") AS "inquiries"`);
  return rows[0];
};

it('makes one client of those that were entered twice, and loses nobody and nothing', async () => {
  const { url, sql } = await enteredThrice();
  expect(await applyMigrations(url, migrations)).toMatchObject({ ok: true });
  expect(await state(sql)).toEqual({
    clients: ['another', 'first'],
    person: 'first',
    inquiries: ['first', 'another'],
  });
});

it('leaves everything as it was when it is cut in the middle', async () => {
  const { url, sql } = await enteredThrice();
  const before = await state(sql);
  const [migration] = migrations.slice(here);
  if (migration === undefined) throw new Error('no such migration');
  const cut = migration.sql.replace(
    'DELETE FROM',
    'SELECT pg_terminate_backend(pg_backend_pid());\nDELETE FROM',
  );
  expect(cut).not.toBe(migration.sql);
  expect((await applyMigrations(url, [...migrations.slice(0, here), { ...migration, sql: cut }])).ok).toBe(
    false,
  );
  expect(await state(sql)).toEqual(before);
  expect(await applyMigrations(url, migrations)).toMatchObject({ ok: true });
});
