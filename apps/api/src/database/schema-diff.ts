import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import type { SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import * as engine from '@prisma/schema-engine-wasm/schema_engine_bg';
import { Pool, type QueryArrayConfig } from 'pg';
import type { Migration } from './apply-migrations.js';

/** The part of WebAssembly that is used here; its types come with those of browsers, which this package has not. */
interface WebAssemblyLoader {
  instantiate(
    code: Uint8Array,
    imports: object,
  ): Promise<{ readonly instance: { readonly exports: Readonly<Record<string, unknown>> } }>;
}

/** What the engine's package does itself where the run time can import WebAssembly, which this Node cannot. */
async function loadEngine(): Promise<void> {
  const file = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const wasm = readFileSync(file.replace(/\.js$/, '.wasm'));
  const { WebAssembly: loader } = globalThis as unknown as { WebAssembly: WebAssemblyLoader };
  const { instance } = await loader.instantiate(wasm, { './schema_engine_bg.js': { ...engine } });
  engine.__wbg_set_wasm(instance.exports);
  (instance.exports['__wbindgen_start'] as () => void)();
}

/** Object identifiers of the types `"char"` and `text` in pg_type. */
const charType = 18;
const textType = 25;

/** Reads columns of the type `"char"`, in which PostgreSQL's own tables are written and which the adapter refuses, as text. */
class DescribingPool extends Pool {
  override async query(config: unknown, values?: unknown): Promise<never> {
    const result = await super.query(config as QueryArrayConfig, values as unknown[]);
    for (const field of result.fields) if (field.dataTypeID === charType) field.dataTypeID = textType;
    return result as never;
  }
}

/** Gives the engine a new, empty database each time it asks for one. */
function scratchDatabases(scratchUrl: string): SqlMigrationAwareDriverAdapterFactory {
  const main = new PrismaPg({ connectionString: scratchUrl });
  let count = 0;
  return {
    provider: main.provider,
    adapterName: main.adapterName,
    connect: () => main.connect(),
    connectToShadowDb: async () => {
      const name = `scratch_${process.pid}_${++count}`;
      const admin = await main.connect();
      await admin.executeScript(`CREATE DATABASE ${name}`);
      const url = Object.assign(new URL(scratchUrl), { pathname: `/${name}` });
      const pool = new DescribingPool({ connectionString: url.href });
      const shadow = await new PrismaPg(pool, { disposeExternalPool: true }).connect();
      // The adapter's own cuts a script at each semicolon, those within functions too.
      shadow.executeScript = async (script) => void (await pool.query(script));
      const dispose = shadow.dispose.bind(shadow);
      shadow.dispose = async () => {
        await dispose();
        await admin.executeScript(`DROP DATABASE ${name}`);
        await admin.dispose();
      };
      return shadow;
    },
  };
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
