import { chmodSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serverAccount } from './account.js';
import { findBinaries } from './binaries.js';
import { startCluster } from './cluster.js';
import { databaseFolder, removeDataFolder } from './folder.js';

export interface ThrowawayServer {
  readonly url: (database: string) => string;
  /** Stops the server and removes its files. */
  readonly remove: () => Promise<void>;
}

/** An empty PostgreSQL server for tests and for making migrations. Its data do not survive the machine. */
export async function startThrowawayServer(): Promise<ThrowawayServer> {
  const data = mkdtempSync(join(tmpdir(), 'flangewise-'));
  chmodSync(data, 0o755);
  const account = serverAccount([]);
  const folder = databaseFolder(data, account);
  if (!folder.ok) throw new Error(folder.error.message);
  const binaries = findBinaries(account, folder.value);
  if (!binaries.ok) throw new Error(binaries.error.message);
  const cluster = await startCluster({
    binaries: binaries.value,
    account,
    folder: folder.value,
    password: 'throwaway',
    logFile: join(data, 'postgres.log'),
    durable: false,
  });
  if (!cluster.ok) throw new Error(cluster.error.message);
  const { url, stop } = cluster.value;
  return {
    url,
    remove: async () => {
      await stop();
      removeDataFolder(data);
    },
  };
}
