import { join } from 'node:path';
import { fail, succeed, type Outcome } from '@flangewise/model';
import { Client } from 'pg';
import { serverAccount } from '../embedded-database/account.js';
import { findBinaries } from '../embedded-database/binaries.js';
import { filesMajor, startCluster } from '../embedded-database/cluster.js';
import { databaseFolder } from '../embedded-database/folder.js';
import { checkout } from './checkout.js';
import type { DataFolder } from './data-folder.js';
import { problem, type StartProblem } from './problems.js';

export interface RunningDatabase {
  readonly url: string;
  readonly stop: () => Promise<void>;
  /** Resolves when the server ended by itself; never for a server of the user's own. */
  readonly ended: Promise<StartProblem>;
}

const databaseName = 'flangewise';

/** A server of the user's own: nothing to start, nothing to stop. */
export function givenDatabase(url: string): RunningDatabase {
  return { url, stop: () => Promise.resolve(), ended: new Promise(() => undefined) };
}

async function createDatabase(serverUrl: string): Promise<void> {
  const client = new Client({ connectionString: serverUrl });
  await client.connect();
  try {
    const { rowCount } = await client.query('SELECT 1 FROM pg_database WHERE datname = $1', [databaseName]);
    if (rowCount === 0) await client.query(`CREATE DATABASE ${databaseName}`);
  } finally {
    await client.end();
  }
}

/** Starts the bundled PostgreSQL on the data of this folder, creating both on first use. */
export async function startDatabase(
  data: DataFolder,
  password: string,
  signal: AbortSignal,
): Promise<Outcome<RunningDatabase, StartProblem>> {
  const account = serverAccount([join(data.path, 'postgres'), data.path, checkout]);
  const folder = databaseFolder(data.path, account);
  if (!folder.ok) return folder;
  const binaries = findBinaries(account, folder.value);
  if (!binaries.ok) return binaries;
  const made = filesMajor(folder.value);
  if (made !== undefined && made !== binaries.value.major)
    return fail(problem('DATABASE_VERSION', { folder: folder.value, made, major: binaries.value.major }));
  const logFile = data.log('postgres');
  const cluster = await startCluster({
    binaries: binaries.value,
    account,
    folder: folder.value,
    password,
    logFile,
    durable: true,
    signal,
  });
  if (!cluster.ok) return cluster;
  const { url, stop, ended } = cluster.value;
  try {
    await createDatabase(url('postgres'));
  } catch (error) {
    await stop();
    const reason = error instanceof Error ? error.message : String(error);
    return fail(problem('DATABASE_NOT_OPENED', { folder: data.path, reason }));
  }
  return succeed({ url: url(databaseName), stop, ended });
}
