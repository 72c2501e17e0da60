import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import * as engine from '@prisma/schema-engine-wasm/schema_engine_bg';
import type { Migration } from './apply-migrations.js';
import { scratchDatabases } from './scratch-databases.js';

/** The part of WebAssembly that is used here; its types come with those of browsers, which this package has not. */
interface WebAssemblyLoader {
  instantiate(
    code: Uint8Array,
    imports: object,
  ): Promise<{ readonly instance: { readonly exports: Readonly<Record<string, unknown>> } }>;
}

let loaded = false;

/** What the engine's package does itself where the run time can import WebAssembly, which this Node cannot. */
async function loadEngine(): Promise<void> {
  if (loaded) return;
  const file = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const wasm = readFileSync(file.replace(/\.js$/, '.wasm'));
  const { WebAssembly: loader } = globalThis as unknown as { WebAssembly: WebAssemblyLoader };
  const { instance } = await loader.instantiate(wasm, { './schema_engine_bg.js': { ...engine } });
  loaded = true;
  engine.__wbg_set_wasm(instance.exports);
  (instance.exports['__wbindgen_start'] as () => void)();
}

export interface SchemaDiff {
  readonly schema: string;
  readonly migrations: readonly Migration[];
  /** A server on which databases may be made and dropped at will. */
  readonly scratchUrl: string;
}

/**
 * The SQL that leads from the migrations to the schema; empty when they agree. Triggers and checks are none of the schema's
 * and are left as they are.
 */
export async function diffSchema({ schema, migrations, scratchUrl }: SchemaDiff): Promise<string> {
  await loadEngine();
  const adapter = bindMigrationAwareSqlAdapterFactory(scratchDatabases(scratchUrl));
  const files = [{ path: 'schema.prisma', content: schema }];
  const session = await engine.SchemaEngine.new({ datamodels: undefined }, () => undefined, adapter);
  const { stdout } = await session.diff({
    from: {
      tag: 'migrations',
      baseDir: '/',
      lockfile: { path: 'migration_lock.toml', content: 'provider = "postgresql"\n' },
      shadowDbInitScript: '',
      migrationDirectories: migrations.map(({ name, sql }) => ({
        path: name,
        migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } },
      })),
    },
    to: { tag: 'schemaDatamodel', files },
    script: true,
    exitCode: null,
    filters: { externalTables: [], externalEnums: [] },
  });
  const sql = (stdout ?? '').trim();
  return /^-- This is an empty migration\.?$/.test(sql) ? '' : sql;
}
