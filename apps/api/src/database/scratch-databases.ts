import {
  ColumnTypeEnum,
  type ColumnType,
  type SqlDriverAdapter,
  type SqlMigrationAwareDriverAdapterFactory,
} from '@prisma/driver-adapter-utils';
import { Pool } from 'pg';

/**
 * What the schema engine reads when it describes a database, by object identifier in pg_type. The ordinary adapter refuses
 * the type `"char"` (18), in which PostgreSQL's own tables are written.
 */
const columnTypes: Readonly<Record<number, ColumnType>> = {
  16: ColumnTypeEnum.Boolean,
  18: ColumnTypeEnum.Character,
  19: ColumnTypeEnum.Text,
  20: ColumnTypeEnum.Int64,
  21: ColumnTypeEnum.Int32,
  23: ColumnTypeEnum.Int32,
  25: ColumnTypeEnum.Text,
  26: ColumnTypeEnum.Int64,
  1002: ColumnTypeEnum.CharacterArray,
  1003: ColumnTypeEnum.TextArray,
  1005: ColumnTypeEnum.Int32Array,
  1009: ColumnTypeEnum.TextArray,
  1043: ColumnTypeEnum.Text,
};

interface Scratch {
  readonly url: string;
  readonly drop: () => Promise<void>;
}

/** A connection for the schema engine alone: it runs scripts and reads descriptions. */
function describingAdapter({ url, drop }: Scratch): SqlDriverAdapter {
  const pool = new Pool({ connectionString: url });
  // Dropping the database ends connections that are still closing.
  pool.on('error', () => undefined);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return {
    provider: 'postgres',
    adapterName: 'scratch',
    queryRaw: async ({ sql, args }) => {
      const { fields, rows } = await pool.query({ text: sql, values: args, rowMode: 'array' });
      return {
        columnNames: fields.map((field) => field.name),
        columnTypes: fields.map((field) => columnTypes[field.dataTypeID] ?? ColumnTypeEnum.Text),
        rows,
      };
    },
    executeRaw: async ({ sql, args }) => (await pool.query(sql, args)).rowCount ?? 0,
    executeScript: async (script) => void (await pool.query(script)),
    startTransaction: () => Promise.reject(new Error('describing a database needs no transaction')),
    dispose: async () => {
      await pool.end();
      await drop();
    },
  };
}

/** Gives the schema engine a new, empty database on the server of `url` each time it asks for one. */
export function scratchDatabases(url: string): SqlMigrationAwareDriverAdapterFactory {
  const open = async (): Promise<SqlDriverAdapter> => {
    const name = `scratch_${crypto.randomUUID().replaceAll('-', '')}`;
    const run = async (sql: string): Promise<void> => {
      const pool = new Pool({ connectionString: url });
      await pool.query(sql).finally(() => pool.end());
    };
    await run(`CREATE DATABASE ${name}`);
    return describingAdapter({
      url: Object.assign(new URL(url), { pathname: `/${name}` }).href,
      drop: () => run(`DROP DATABASE ${name} WITH (FORCE)`),
    });
  };
  return { provider: 'postgres', adapterName: 'scratch', connect: open, connectToShadowDb: open };
}
