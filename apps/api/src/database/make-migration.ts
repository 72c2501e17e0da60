import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { startThrowawayServer } from '../embedded-database/throwaway-server.js';
import { checkout } from '../start/checkout.js';
import { readMigrations } from './apply-migrations.js';
import { diffSchema } from './schema-diff.js';

// Writes the migration that leads from the existing ones to prisma/schema.prisma: npm run migration -- add-share-links

const name = process.argv[2] ?? '';
if (/^[a-z][a-z0-9-]*$/.test(name)) {
  const folder = join(checkout, 'prisma', 'migrations');
  const server = await startThrowawayServer();
  const sql = await diffSchema({
    schema: readFileSync(join(checkout, 'prisma', 'schema.prisma'), 'utf8'),
    migrations: readMigrations(folder),
    scratchUrl: server.url('postgres'),
  }).finally(server.remove);
  if (sql === '') console.log('The migrations already lead to prisma/schema.prisma: nothing to write.');
  else {
    const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
    const file = join(folder, `${stamp}_${name.replaceAll('-', '_')}`, 'migration.sql');
    mkdirSync(join(file, '..'));
    writeFileSync(file, `${sql}\n`);
    console.log(
      `Written: ${file}\nRead it, add what the schema cannot say (checks, triggers, moved data), and run the tests.`,
    );
  }
} else {
  console.error(
    `The name is "${name}"; allowed are small letters, digits and hyphens, for instance add-share-links.`,
  );
  process.exitCode = 1;
}
